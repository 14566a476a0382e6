import { InvalidArgumentError } from "@tapewise/outcome";
import { bivariateNormalBox, normalIntervalProbability } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const inf = Number.POSITIVE_INFINITY;

test("a quadrant holds 1/4 + asin(ρ)/2π (Sheppard 1898), on both sides of the change of method", () => {
  for (const rho of [-1, -0.99, -0.9, -0.5, 0, 0.3, 0.924, 0.925, 0.9250001, 0.999, 1 - 1e-12, 1]) {
    const share = 0.25 + Math.asin(rho) / (2 * Math.PI);
    expect(Math.abs(bivariateNormalBox(0, inf, 0, inf, rho) - share)).toBeLessThanOrEqual(3e-16);
    expect(Math.abs(bivariateNormalBox(-inf, 0, 0, inf, -rho) - share)).toBeLessThanOrEqual(3e-16);
  }
});

test("the methods meet without a step", () => {
  for (const [u1, u2] of [
    [0.5, 0.5],
    [-1, 1.5],
    [2, 1.9],
  ] as const) {
    const below = bivariateNormalBox(-1, u1, -inf, u2, 0.925);
    const above = bivariateNormalBox(-1, u1, -inf, u2, 0.925 + 2 ** -52);
    expect(Math.abs(above - below)).toBeLessThanOrEqual(6e-16);
  }
});

test("the square of conditional normals: a narrow slice holds its conditional share", () => {
  // Given X = x, Y is normal with mean ρx and deviation √(1 − ρ²) = 0.8 at ρ = 0.6.
  const slice = bivariateNormalBox(1, 1 + 1e-6, -0.5, 0.5, 0.6);
  const given = normalIntervalProbability((-0.5 - 0.6) / 0.8, (0.5 - 0.6) / 0.8);
  expect(slice / normalIntervalProbability(1, 1 + 1e-6)).toBeCloseTo(given, 6);
});

test("full correlation puts everything on a line", () => {
  expect(bivariateNormalBox(-1, 1, 0, 2, 1)).toBeCloseTo(normalIntervalProbability(0, 1), 15);
  expect(bivariateNormalBox(-1, 1, 0, 2, -1)).toBeCloseTo(normalIntervalProbability(-1, 0), 15);
  expect(bivariateNormalBox(-2, -1, 0, 2, 1)).toBe(0);
});

test("everything and nothing", () => {
  for (const rho of [-1, -0.95, 0.4, 1]) {
    expect(bivariateNormalBox(-inf, inf, -inf, inf, rho)).toBe(1);
    expect(bivariateNormalBox(-inf, inf, 1, 1, rho)).toBe(0);
    expect(bivariateNormalBox(inf, inf, -inf, inf, rho)).toBe(0);
  }
});

test("a box out of reach is empty, never below zero", () => {
  for (const rho of [-0.99, -0.3, 0.3, 0.99]) {
    expect(bivariateNormalBox(1e200, inf, -1e200, 1e200, rho)).toBe(0);
    expect(bivariateNormalBox(8, 9, -9, -8, rho)).toBeGreaterThanOrEqual(0);
  }
});

describe("what is refused", () => {
  test("bounds out of order, by name", () => {
    expect(() => bivariateNormalBox(1, 0, 0, 1, 0)).toThrow(
      new InvalidArgumentError("upper1", 0, "at least lower1 (1)"),
    );
    expect(() => bivariateNormalBox(0, 1, 1, 0, 0)).toThrow(
      new InvalidArgumentError("upper2", 0, "at least lower2 (1)"),
    );
    expect(() => bivariateNormalBox(0, 1, Number.NaN, 0, 0)).toThrow(InvalidArgumentError);
  });

  test.each([1.0000001, -2, Number.NaN])("a correlation of %d", (rho) => {
    expect(() => bivariateNormalBox(0, 1, 0, 1, rho)).toThrow(
      new InvalidArgumentError("rho", rho, "a correlation from -1 to 1"),
    );
  });
});
