import { interval, union, unionContains } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

const parts = union(interval(1, 2), interval(3, 4, { fromClosed: false }));

test.each([
  [0, false],
  [1, true],
  [2, true],
  [2.5, false],
  [3, false],
  [3.5, true],
  [4, true],
  [5, false],
])("[1, 2] and (3, 4] hold %d: %s", (x, expected) => {
  expect(unionContains(parts, x)).toBe(expected);
});

test("the empty union holds nothing", () => {
  expect(unionContains(union(), 1)).toBe(false);
});

test("refuses NaN", () => {
  expect(() => unionContains(parts, Number.NaN)).toThrow(InvalidArgumentError);
});
