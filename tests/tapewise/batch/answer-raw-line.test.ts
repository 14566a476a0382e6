import { safeParseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { answerRawLine, LONGEST_LINE } from "tapewise/batch";
import { describe, expect, test } from "vitest";

const chart = unwrap(safeParseChart("size,torso-length (cm)\nS,38-43\nM,42-47\n", { chart: "Plain" }));
const person = '{"id":"p1","readings":{"torso-length":["44 cm"]}}';
const answer = (content: string | Uint8Array, number = 1) =>
  answerRawLine(
    { number, bytes: typeof content === "string" ? new TextEncoder().encode(content) : content },
    [chart],
  );

describe("answerRawLine", () => {
  test.each(["", "   ", "\t", "\uFEFF"])("has no answer to the blank line %j", (text) => {
    expect(answer(text)).toBeUndefined();
  });

  test("passes over a byte order mark where the stream begins, and nowhere else", () => {
    expect(answer(`\uFEFF${person}`, 1)).toMatchObject({ id: "p1" });
    expect(answer(`\uFEFF${person}`, 2)).toMatchObject({
      issues: [{ code: "batch-line-not-json", facts: { line: 2 } }],
    });
  });

  test("reports bytes that are not UTF-8", () => {
    expect(answer(new Uint8Array([0x7b, 0xff, 0x7d]), 9)).toMatchObject({
      id: null,
      issues: [{ code: "batch-line-not-utf8", facts: { line: 9 } }],
    });
  });

  test("reports a line that was too long to keep", () => {
    expect(answerRawLine({ number: 3 }, [chart])).toMatchObject({
      id: null,
      issues: [{ code: "batch-line-too-long", facts: { line: 3, limit: LONGEST_LINE } }],
    });
  });
});
