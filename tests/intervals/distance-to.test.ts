import { atLeast, atMost, distanceTo, everything, interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

test.each([
  [418, 12],
  [430, 0],
  [455, 0],
  [480, 0],
  [492, 12],
])("[430, 480] and %d: %d", (x, expected) => {
  expect(distanceTo(interval(430, 480), x)).toBe(expected);
});

test("an open end is as near as a closed one", () => {
  expect(distanceTo(interval(430, 480, { fromClosed: false }), 430)).toBe(0);
});

test("a side without a bound has no outside", () => {
  expect(distanceTo(atLeast(430), 9999)).toBe(0);
  expect(distanceTo(atLeast(430), 428)).toBe(2);
  expect(distanceTo(atMost(430), 432)).toBe(2);
  expect(distanceTo(everything, 0)).toBe(0);
});

test.each([Number.NaN, Infinity, -Infinity])("refuses %d", (x) => {
  expect(() => distanceTo(everything, x)).toThrow(InvalidArgumentError);
});
