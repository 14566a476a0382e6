import { drawSheet, line, type Sheet } from "@tapewise/figures";
import { describe, expect, test } from "vitest";

const sheet: Sheet = {
  title: "Where S meets M",
  description: "A line with a mark.",
  notes: ["Sample: nobody."],
  id: "where",
  width: 720,
  height: 90,
};

describe("a sheet", () => {
  test("names its title and description for screen readers", () => {
    const svg = drawSheet(sheet, []);
    expect(svg).toContain('role="img" aria-labelledby="where-title where-desc"');
    expect(svg).toContain('<title id="where-title">Where S meets M</title>');
    expect(svg).toContain('<desc id="where-desc">A line with a mark.</desc>');
  });

  test("has its drawing, and room for a line of 16 units for each note", () => {
    const mark = line(1, 2, 3, 4);
    const svg = drawSheet({ ...sheet, notes: ["One.", "Two."] }, [mark]);
    expect(svg).toContain(mark);
    // 90 of title and drawing, twice 16 of notes, 12 of margin.
    expect(svg).toContain('viewBox="0 0 720 134" width="720" height="134"');
  });

  test("breaks long notes at spaces, and shortens a word that fits no line", () => {
    // (720 - 18) / 6.5 = 108 characters a line; 21 words of four letters are 104 of them, 22 are 109.
    const svg = drawSheet({ ...sheet, notes: [Array(22).fill("word").join(" "), "x".repeat(200)] }, []);
    const texts = [...svg.matchAll(/<text [^>]*font-size="12"[^>]*>([^<]*)</g)].map(([, text]) => text);
    expect(texts).toEqual([Array(21).fill("word").join(" "), "word", `${"x".repeat(107)}…`]);
  });

  test("sets a long title smaller, so that it stays within the width", () => {
    const sizeOf = (title: string): number =>
      Number(/font-size="([\d.]+)" font-weight/.exec(drawSheet({ ...sheet, title }, []))?.[1]);
    expect(sizeOf("short")).toBe(17);
    // 680 / (0.6 * 80) = 14.17
    expect(sizeOf("x".repeat(80))).toBe(14.17);
    expect(sizeOf("x".repeat(500))).toBe(11);
  });

  test("takes nothing in its words for markup", () => {
    const svg = drawSheet(
      { ...sheet, title: "<script>", description: "a & b", notes: ['"<i>"'], id: 'a"b' },
      [],
    );
    expect(svg).not.toMatch(/<script>|<i>|a & b|id="a"b/);
  });
});
