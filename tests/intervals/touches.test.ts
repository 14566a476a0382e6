import { interval, point, touches } from "@tapewise/intervals";
import { expect, test } from "vitest";

test.each([
  ["share the end 2", interval(1, 2), interval(2, 3), true],
  ["are adjacent at 2", interval(1, 2, { toClosed: false }), interval(2, 3), true],
  ["leave out the 2", interval(1, 2, { toClosed: false }), interval(2, 3, { fromClosed: false }), false],
  ["lie apart", interval(1, 2), interval(3, 4), false],
  ["overlap", interval(1, 3), interval(2, 4), false],
  ["hold one another's point inside", interval(1, 3), point(2), false],
])("two intervals that %s: %o, %o: %s", (_, a, b, expected) => {
  expect(touches(a, b)).toBe(expected);
  expect(touches(b, a)).toBe(expected);
});
