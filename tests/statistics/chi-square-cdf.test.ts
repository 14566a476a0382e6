import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("two degrees of freedom are the exponential distribution with mean 2", () => {
  for (const x of [0, 1e-9, 0.5, 2, 30]) expect(chiSquareCdf(x, 2)).toBeCloseTo(-Math.expm1(-x / 2), 15);
});

test("the ends", () => {
  expect(chiSquareCdf(0, 5)).toBe(0);
  expect(chiSquareCdf(Number.POSITIVE_INFINITY, 5)).toBe(1);
});

test("with many degrees of freedom it is nearly normal", () => {
  // The skewness is √(8/df): at the mean the distribution is above ½ by skewness/6 times φ(0).
  const expected = 0.5 + (Math.sqrt(8 / 1e6) / 6) * 0.3989;
  expect(chiSquareCdf(1e6, 1e6)).toBeCloseTo(expected, 7);
});

test("what it is not made for is refused", () => {
  expect(() => chiSquareCdf(-1, 2)).toThrow(new InvalidArgumentError("x", -1, "zero or a number above it"));
  expect(() => chiSquareCdf(1, 0)).toThrow(InvalidArgumentError);
  expect(() => chiSquareCdf(1, Number.POSITIVE_INFINITY)).toThrow(InvalidArgumentError);
});
