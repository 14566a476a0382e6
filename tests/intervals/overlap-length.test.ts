import { atLeast, everything, interval, overlapLength, point } from "@tapewise/intervals";
import { expect, test } from "vitest";

test.each([
  [interval(1, 4), interval(2, 6), 2],
  [interval(1, 6), interval(2, 4), 2],
  [interval(1, 6), interval(2, 4, { fromClosed: false, toClosed: false }), 2],
  [interval(1, 2), interval(2, 3), 0],
  [interval(1, 2), interval(4, 5), 0],
  [interval(1, 2), point(1.5), 0],
  [atLeast(3), interval(1, 10), 7],
  [atLeast(3), everything, Infinity],
])("%o with %o: %d", (a, b, expected) => {
  expect(overlapLength(a, b)).toBe(expected);
  expect(overlapLength(b, a)).toBe(expected);
});
