import { InvalidArgumentError } from "@tapewise/outcome";
import { incompleteGamma } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("shapes 1 and 2 have closed forms", () => {
  for (const x of [0, 1e-12, 0.3, 1.9, 2.1, 7, 40]) {
    expect(incompleteGamma(1, x)).toBeCloseTo(-Math.expm1(-x), 15);
    expect(incompleteGamma(2, x)).toBeCloseTo(1 - (1 + x) * Math.exp(-x), 14);
  }
});

test("a small share keeps its digits", () => {
  // P(2, x) = x²/2 − x³/3 + …
  expect(incompleteGamma(2, 1e-9) / 5e-19).toBeCloseTo(1, 8);
});

test("the ends", () => {
  expect(incompleteGamma(3, 0)).toBe(0);
  expect(incompleteGamma(3, Number.POSITIVE_INFINITY)).toBe(1);
  expect(incompleteGamma(1e-10, 1e308)).toBe(1);
});

test("shapes and arguments that it is not made for are refused", () => {
  expect(() => incompleteGamma(0, 1)).toThrow(
    new InvalidArgumentError("a", 0, "a number from 1e-10 to 10000000000"),
  );
  expect(() => incompleteGamma(1e11, 1)).toThrow(InvalidArgumentError);
  expect(() => incompleteGamma(1, -1)).toThrow(
    new InvalidArgumentError("x", -1, "zero or a number above it"),
  );
  expect(() => incompleteGamma(1, Number.NaN)).toThrow(InvalidArgumentError);
});
