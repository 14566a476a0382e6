import { atLeast, everything, formatInterval, hull, interval, point } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("spans all of them, in any order, holes included", () => {
  expect(formatInterval(hull(interval(5, 6), interval(1, 2), point(3)))).toBe("[1, 6]");
});

test("keeps an end closed when any interval closes it there", () => {
  const open = interval(1, 6, { fromClosed: false, toClosed: false });
  expect(formatInterval(hull(open, interval(1, 2)))).toBe("[1, 6)");
  expect(formatInterval(hull(open, point(6)))).toBe("(1, 6]");
  expect(formatInterval(hull(open, interval(2, 3)))).toBe("(1, 6)");
});

test("loses a bound that one of them lacks", () => {
  expect(formatInterval(hull(interval(1, 2), atLeast(5)))).toBe("[1, ∞)");
  expect(hull(interval(1, 2), everything)).toEqual(everything);
});

test("one interval is its own hull", () => {
  expect(hull(interval(1, 2))).toEqual(interval(1, 2));
});
