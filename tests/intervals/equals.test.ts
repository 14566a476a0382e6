import { equals, everything, interval } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("the same bounds and the same ends", () => {
  expect(equals(interval(1, 2), interval(1, 2))).toBe(true);
  expect(equals(everything, interval(-Infinity, Infinity))).toBe(true);
  expect(equals(interval(0, 2), interval(-0, 2))).toBe(true);
});

test.each([
  interval(1, 3),
  interval(0, 2),
  interval(1, 2, { fromClosed: false }),
  interval(1, 2, { toClosed: false }),
])("[1, 2] differs from %o", (other) => {
  expect(equals(interval(1, 2), other)).toBe(false);
  expect(equals(other, interval(1, 2))).toBe(false);
});
