import { describe, expect, test } from "vitest";
import { normalBoxProbability, type Scores } from "../../packages/fit/src/normal-box-probability.ts";

const UP: Scores = [0, Number.POSITIVE_INFINITY];
const ALL: Scores = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

function equal(size: number, rho: number): readonly (readonly number[])[] {
  return Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => (i === j ? 1 : rho)));
}

describe("orthants, for which the probability is known in closed form", () => {
  // Sheppard 1898, as in Johnson & Kotz 1972, ch. 36 (from memory).
  test.each([-0.9, -0.5, 0, 0.3, 0.95, 0.9999])(
    "two variables with correlation %d: 1/4 + asin ρ / 2π",
    (rho) => {
      expect(normalBoxProbability([UP, UP], equal(2, rho))).toBeCloseTo(
        0.25 + Math.asin(rho) / (2 * Math.PI),
        14,
      );
    },
  );

  test.each([
    [0, 0, 0],
    [0.5, 0.3, -0.2],
    [0.9, 0.8, 0.95],
    [-0.4, -0.3, -0.2],
  ])("three variables with correlations %d, %d, %d: 1/8 + Σ asin ρ / 4π", (ab, ac, bc) => {
    const matrix = [
      [1, ab, ac],
      [ab, 1, bc],
      [ac, bc, 1],
    ];
    const expected = 1 / 8 + (Math.asin(ab) + Math.asin(ac) + Math.asin(bc)) / (4 * Math.PI);
    expect(normalBoxProbability([UP, UP, UP], matrix)).toBeCloseTo(expected, 10);
  });

  // All correlations ½: the chance that one of n + 1 equal variables is the least, 1/(n + 1).
  test.each([
    [1, 14],
    [2, 14],
    [3, 10],
    [4, 10],
    [5, 4],
    [6, 4],
  ])("%i variables with correlation ½, to %i digits", (count, digits) => {
    const box = Array.from({ length: count }, () => UP);
    expect(normalBoxProbability(box, equal(count, 0.5))).toBeCloseTo(1 / (count + 1), digits);
  });
});

test("variables without bounds count for nothing", () => {
  expect(normalBoxProbability([ALL, ALL, ALL], equal(3, 0.4))).toBeCloseTo(1, 12);
  const pair = normalBoxProbability([UP, [-1, 1]], equal(2, 0.4));
  expect(normalBoxProbability([UP, [-1, 1], ALL], equal(3, 0.4))).toBeCloseTo(pair, 11);
});

test("correlations that are next to nothing change next to nothing", () => {
  const box: readonly Scores[] = [UP, [-1, 1], ALL];
  // ½ · (2 Φ(1) − 1) = ½ · 0.682689492137086 (printed tables)
  for (const rho of [0, 1e-320, 1e-200, 1e-13, 1e-11]) {
    expect(normalBoxProbability(box, equal(3, rho))).toBeCloseTo(0.682689492137086 / 2, 10);
  }
});

test("nothing fits an interval without width, and nothing nowhere", () => {
  expect(normalBoxProbability([[1, 1], UP, UP], equal(3, 0.4))).toBe(0);
  expect(normalBoxProbability([[20, 30], UP, UP], equal(3, 0.4))).toBe(0);
  expect(normalBoxProbability([], [])).toBe(1);
});
