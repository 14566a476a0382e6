import { atLeast, atMost, everything, interval, midpoint, point } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("halfway between the bounds", () => {
  expect(midpoint(interval(430, 480))).toBe(455);
  expect(midpoint(interval(-1, 2, { toClosed: false }))).toBe(0.5);
  expect(midpoint(point(430))).toBe(430);
});

test("there is none where a bound is missing", () => {
  expect([atLeast(1), atMost(1), everything].map(midpoint)).toEqual([undefined, undefined, undefined]);
});

test("bounds whose sum is too large for a number still have a middle", () => {
  expect(midpoint(interval(Number.MAX_VALUE, Number.MAX_VALUE))).toBe(Number.MAX_VALUE);
});
