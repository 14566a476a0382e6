import { roundingCorrelation } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

/**
 * The same correlation by another road. Two readings of one length differ by d before rounding. If the
 * length may lie anywhere between two marks, the rounding errors of step 1 have the covariance
 * ∫ e(x) e(x + d) dx over one step with e(x) = x − ½ on [0, 1): with u = d − ⌊d⌋ that is
 * 1/12 − u/2 + u²/2, which is 1/12 of 1 − 6u + 6u². The correlation is its mean over d ~ N(0, 2σ²),
 * here by Simpson's rule on each step, where the integrand is smooth.
 */
function byQuadrature(scatterInSteps: number): number {
  const sd = scatterInSteps * Math.SQRT2;
  const f = (d: number, start: number) => {
    const u = d - start;
    return (1 - 6 * u + 6 * u * u) * Math.exp(-0.5 * (d / sd) ** 2);
  };
  const end = 10 * sd;
  let sum = 0;
  for (let start = 0; start < end; start += 1) {
    const width = Math.min(1, end - start);
    const panels = 4000;
    const h = width / panels;
    let inner = f(start, start) + f(start + width, start);
    for (let i = 1; i < panels; i += 1) inner += (i % 2 === 1 ? 4 : 2) * f(start + i * h, start);
    sum += (inner * h) / 3;
  }
  return (2 * sum) / (sd * Math.sqrt(2 * Math.PI));
}

describe("roundingCorrelation", () => {
  test.each([0.0001, 0.003, 0.02, 0.05, 0.07, 0.08, 0.09, 0.12, 0.2, 0.3, 0.5, 0.8])(
    "is the mean correlation of two roundings at a scatter of %f steps",
    (scatter) => {
      expect(roundingCorrelation(scatter, 1)).toBeCloseTo(byQuadrature(scatter), 11);
      expect(roundingCorrelation(scatter * 25.4, 25.4)).toBeCloseTo(roundingCorrelation(scatter, 1), 14);
    },
  );

  test("is what simulated readings show", () => {
    const random = createRandom(1927);
    for (const scatter of [0.05, 0.15, 0.3]) {
      const count = 40_000;
      let cross = 0;
      let crossSquares = 0;
      for (let i = 0; i < count; i += 1) {
        const length = random.uniform();
        const [first, second] = [length + scatter * random.normal(), length + scatter * random.normal()];
        const product = 12 * (Math.round(first) - first) * (Math.round(second) - second);
        cross += product;
        crossSquares += product ** 2;
      }
      const mean = cross / count;
      const error = Math.sqrt((crossSquares / count - mean ** 2) / count);
      // Four standard errors: one such test in 16,000 fails by chance, and the seed is fixed.
      expect(Math.abs(roundingCorrelation(scatter, 1) - mean)).toBeLessThan(4 * error);
    }
  });

  test("vanishes where readings scatter over several marks", () => {
    // (6/π²) exp(−(2π · 2)²) = 0.6 · e^−158
    expect(roundingCorrelation(20, 10)).toBeLessThan(1e-68);
    expect(roundingCorrelation(6, 1)).toBe(0);
    expect(roundingCorrelation(1e300, 1e-300)).toBe(0);
  });

  test("is 1 where readings do not scatter, and close to it where they hardly do", () => {
    expect(roundingCorrelation(0, 10)).toBe(1);
    // Two readings then fall on different marks with probability E|d| = 2σ/√π; 1 − 12σ/(√π q).
    expect(roundingCorrelation(1e-9, 1)).toBeCloseTo(1 - 12e-9 / Math.sqrt(Math.PI), 15);
    expect(roundingCorrelation(1e-300, 1e300)).toBe(1);
  });

  test("falls as the scatter grows, without a jump", () => {
    const values = Array.from({ length: 2000 }, (_, i) => roundingCorrelation(i / 2000, 1));
    for (const [i, value] of values.entries()) {
      const next = values[i + 1] ?? value;
      expect(next).toBeLessThanOrEqual(value);
      // The steepest fall is 12/√π = 6.8 for each step of scatter, at the start.
      expect(value - next).toBeLessThan(6.8 / 2000);
    }
  });

  test.each([
    [-1, 1, "scatterMm"],
    [Number.NaN, 1, "scatterMm"],
    [Number.POSITIVE_INFINITY, 1, "scatterMm"],
    [1, 0, "stepMm"],
    [1, -1, "stepMm"],
    [1, Number.NaN, "stepMm"],
    [1, Number.POSITIVE_INFINITY, "stepMm"],
  ])("refuses a scatter of %f with a step of %f", (scatter, step, argument) => {
    expect(() => roundingCorrelation(scatter, step)).toThrow(InvalidArgumentError);
    expect(() => roundingCorrelation(scatter, step)).toThrow(`${argument} must be`);
  });
});
