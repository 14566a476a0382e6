import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareUpperTail } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed forms for 2 and 4 degrees of freedom, far out too", () => {
  for (const x of [0, 0.5, 2, 30, 1000]) {
    expect(chiSquareUpperTail(x, 2) / Math.exp(-x / 2)).toBeCloseTo(1, 12);
    expect(chiSquareUpperTail(x, 4) / ((1 + x / 2) * Math.exp(-x / 2))).toBeCloseTo(1, 12);
  }
});

test("the ends", () => {
  expect(chiSquareUpperTail(0, 5)).toBe(1);
  expect(chiSquareUpperTail(Number.POSITIVE_INFINITY, 5)).toBe(0);
});

test("what it is not made for is refused", () => {
  expect(() => chiSquareUpperTail(-1, 2)).toThrow(InvalidArgumentError);
  expect(() => chiSquareUpperTail(1, Number.NaN)).toThrow(InvalidArgumentError);
});
