import { InvalidArgumentError } from "@tapewise/outcome";
import { integrateFromZero } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("polynomials up to degree 31 are integrated exactly", () => {
  // Sixteen points are exact up to degree 2 × 16 − 1.
  expect(integrateFromZero((u) => 32 * u ** 31, 1)).toBeCloseTo(1, 14);
  expect(integrateFromZero((u) => u ** 5, 2)).toBeCloseTo(64 / 6, 13);
});

test("an exponential fall by a factor of e", () => {
  expect(integrateFromZero((u) => Math.exp(-u), 1)).toBeCloseTo(1 - 1 / Math.E, 15);
});

test("nothing is integrated over no width, and backwards over one below zero", () => {
  expect(integrateFromZero(() => 7, 0)).toBe(0);
  expect(integrateFromZero((u) => u * u, -3)).toBeCloseTo(-9, 13);
});

test("an endless width and a function without values are refused", () => {
  expect(() => integrateFromZero(() => 1, Number.POSITIVE_INFINITY)).toThrow(
    new InvalidArgumentError("width", Number.POSITIVE_INFINITY, "a finite number"),
  );
  expect(() => integrateFromZero(() => Number.NaN, 1)).toThrow(
    new InvalidArgumentError("f", Number.NaN, "a function that gives numbers"),
  );
});
