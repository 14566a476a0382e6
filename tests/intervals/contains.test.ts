import { atLeast, contains, everything, interval, point } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

test.each([
  [0.999, false],
  [1, true],
  [1.5, true],
  [2, true],
  [2.001, false],
])("[1, 2] and %d: %s", (x, expected) => {
  expect(contains(interval(1, 2), x)).toBe(expected);
});

test("an open end does not belong", () => {
  const open = interval(1, 2, { fromClosed: false, toClosed: false });
  expect(contains(open, 1)).toBe(false);
  expect(contains(open, 1.5)).toBe(true);
  expect(contains(open, 2)).toBe(false);
});

test("a point holds itself only", () => {
  expect(contains(point(1), 1)).toBe(true);
  expect(contains(point(1), 1 + Number.EPSILON)).toBe(false);
});

test("infinities belong to no interval", () => {
  expect(contains(atLeast(1), Infinity)).toBe(false);
  expect(contains(everything, -Infinity)).toBe(false);
  expect(contains(everything, Number.MAX_VALUE)).toBe(true);
});

test("NaN is refused rather than called outside", () => {
  expect(() => contains(everything, Number.NaN)).toThrow(InvalidArgumentError);
});
