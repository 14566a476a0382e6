import { atLeast, atMost, everything, interval, intervalLength, point } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("upper bound minus lower, whatever the ends", () => {
  expect(intervalLength(interval(430, 480))).toBe(50);
  expect(intervalLength(interval(430, 480, { fromClosed: false, toClosed: false }))).toBe(50);
  expect(intervalLength(interval(-3, -1))).toBe(2);
});

test("a point has none, a missing bound makes it infinite", () => {
  expect(intervalLength(point(430))).toBe(0);
  expect([atLeast(1), atMost(1), everything].map(intervalLength)).toEqual([Infinity, Infinity, Infinity]);
});
