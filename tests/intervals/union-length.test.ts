import { atMost, interval, point, union, unionLength } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("adds the parts and counts nothing twice", () => {
  expect(unionLength(union())).toBe(0);
  expect(unionLength(union(interval(1, 4), interval(2, 5), interval(7, 8), point(10)))).toBe(5);
  expect(unionLength(union(atMost(1), interval(2, 3)))).toBe(Infinity);
});
