import { atLeast, atMost, interval, point } from "@tapewise/intervals";
import { describe, expect, test } from "vitest";
import { drawRuler } from "../../../../packages/tapewise/src/command/picture/draw-ruler.ts";

const size = (label: string, from: number, to: number, inferred = false) => ({
  label,
  interval: interval(from, to),
  inferred,
  note: "",
});

/*
 * By hand. Lengths 400 to 500 mm: 4 % of air is 4 mm, at least 5 mm, so 395 to 505 mm. With 47 columns
 * there may be floor(46 / 6) = 7 steps. Steps of 10 mm: from 390 to 510 would be 12; of 20 mm:
 * 380 to 520, which is 7. So the ruler runs from 380 to 520 mm over 46 gaps, and a length L stands at
 * column round((L - 380) / 140 * 46): 400 -> 7, 450 -> 23, 500 -> 39.
 */
const WIDTH = 2 + 2 + 2 + 47 + 2 + 3; // margin, label, space, ruler, space, note

describe("drawRuler", () => {
  const lines = drawRuler({
    sizes: [{ ...size("S", 400, 450), note: "9 %" }, size("L", 450, 500)],
    bodies: [],
    unit: "cm",
    width: WIDTH,
  });
  const drawn = (line: string | undefined) => (line ?? "").slice(6, 6 + 47);

  test("puts equal lengths into equal columns", () => {
    expect(lines.map((line) => line.length <= WIDTH)).not.toContain(false);
    const [, , small, large] = lines;
    // The label is two characters wide ("cm"), with two spaces on either side: the ruler begins at 6.
    expect(small?.indexOf("[")).toBe(6 + 7);
    expect(small?.indexOf("]")).toBe(6 + 23);
    expect(large?.indexOf("[")).toBe(6 + 23);
    expect(large?.indexOf("]")).toBe(6 + 39);
  });

  test("labels the marks of the ruler in its unit", () => {
    expect(lines[0]?.trim().split(/\s+/)).toEqual(["cm", "38", "40", "42", "44", "46", "48", "50", "52"]);
    expect([...drawn(lines[1])].filter((character) => character === "+")).toHaveLength(8);
  });

  test("writes the note at the end of the line", () => {
    expect(lines[2]?.endsWith("  9 %")).toBe(true);
  });

  test("draws inferred intervals and open ends differently", () => {
    const [, , inferred, below, above, all, single] = drawRuler({
      sizes: [
        size("a", 400, 450, true),
        { label: "b", interval: atMost(450), inferred: false, note: "" },
        { label: "c", interval: atLeast(450), inferred: false, note: "" },
        {
          label: "d",
          interval: { from: -Infinity, to: Infinity, fromClosed: false, toClosed: false },
          inferred: false,
          note: "",
        },
        { label: "e", interval: point(450), inferred: false, note: "" },
      ],
      bodies: [],
      unit: "cm",
    });
    expect(inferred).toMatch(/^ {2}a +\(\.+\)$/);
    expect(below).toMatch(/^ {2}b {3}<=+\]$/);
    expect(above).toMatch(/^ {2}c +\[=+>$/);
    expect(all).toMatch(/^ {2}d {3}<=+>$/);
    expect(single).toMatch(/^ {2}e +\|$/);
  });

  test("draws the body as a mean within its interval", () => {
    const body = { label: "you", meanMm: 450, lowerMm: 430, upperMm: 470, note: "45.0" };
    const [, , , you] = drawRuler({ sizes: [size("M", 400, 500)], bodies: [body], unit: "cm" });
    expect(you).toMatch(/^ {2}you +\|-+\*-+\| +45\.0$/);
    const [before, after] = (you ?? "").split("*");
    expect(
      Math.abs((before?.match(/-/g)?.length ?? 0) - (after?.match(/-/g)?.length ?? 0)),
    ).toBeLessThanOrEqual(1);
  });

  test("measures an inch ruler in inches", () => {
    const inches = drawRuler({ sizes: [size("M", 16 * 25.4, 20 * 25.4)], bodies: [], unit: "in" });
    const labels = (inches[0] ?? "").trim().split(/\s+/).slice(1).map(Number);
    // 4 in and 4 % of air (4 mm, taken as 5): 15.8 in to 20.2 in, in whole inches 15 to 21 or in halves 15.5 to 20.5.
    expect(labels[0]).toBe(15.5);
    expect(labels.at(-1)).toBe(20.5);
  });

  test("draws a chart without any finite end", () => {
    const everything = { from: -Infinity, to: Infinity, fromClosed: false, toClosed: false };
    const lines = drawRuler({
      sizes: [{ label: "one", interval: everything, inferred: false, note: "" }],
      bodies: [],
      unit: "cm",
    });
    expect(lines[2]).toMatch(/^ {2}one {2}<=+>$/);
  });

  test("shortens long names and keeps the page's width", () => {
    const lines = drawRuler({ sizes: [size("extra extra large tall", 400, 500)], bodies: [], unit: "cm" });
    expect(lines[2]).toContain("  extra extra ..");
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
  });
});
