import { safeParseOutcomeLine, writeOutcomeLine } from "@tapewise/afterwards";
import { IssuesError } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { rowOf } from "./rows.ts";

test("a row is one line, whatever its names hold, and comes back", () => {
  const row = rowOf({ person: "a\nb\u2028c\u0085d\u202E\uD800 ü", size: '"' });
  const line = writeOutcomeLine(row);
  expect(line).toMatch(/^[^\n\r\u0085\u2028\u2029\u202E]+$/);
  expect(line.isWellFormed()).toBe(true);
  const outcome = safeParseOutcomeLine(line);
  expect(outcome.ok && outcome.value).toEqual(row);
});

test("fields stand in one order", () => {
  const { v, at, product, size, outcome } = rowOf();
  expect(writeOutcomeLine({ outcome, size, product, at, v })).toBe(
    '{"v":1,"at":"2026-05-04","product":{"chart":"Doily 45"},"size":"M","outcome":"kept"}',
  );
});

test("what is no row is not written", () => {
  expect(() => writeOutcomeLine(rowOf({ size: "" }))).toThrow(IssuesError);
});
