import { dimensionIds, plausibleLimits } from "@tapewise/landmarks";
import { menReference, womenReference } from "@tapewise/population";
import { describe, expect, test } from "vitest";

describe.each([
  ["women", womenReference],
  ["men", menReference],
] as const)("the figures of %s", (cut, figures) => {
  const size = figures.dimensions.length;

  test("name a mean, a standard deviation and correlations for each dimension", () => {
    expect(figures.cut).toBe(cut);
    expect(figures.dimensions.every((dimension) => dimensionIds.includes(dimension))).toBe(true);
    expect(new Set(figures.dimensions).size).toBe(size);
    expect(figures.meanMm).toHaveLength(size);
    expect(figures.sdMm).toHaveLength(size);
    expect(figures.correlation.map((row) => row.length)).toEqual(Array(size).fill(size));
  });

  test("hold a correlation matrix: symmetric, 1 with itself, positive definite", () => {
    figures.correlation.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(value).toBe(figures.correlation[j]?.[i]);
        expect(Math.abs(value)).toBeLessThanOrEqual(1);
        expect(value === 1).toBe(i === j);
      });
    });
    // Cholesky's method finds only positive pivots exactly when a matrix is positive definite.
    const pivots: number[] = [];
    const rows = figures.correlation.map((row) => [...row]);
    for (let k = 0; k < size; k += 1) {
      const pivot = rows[k]?.[k] ?? 0;
      pivots.push(pivot);
      for (let i = k + 1; i < size; i += 1) {
        const factor = (rows[i]?.[k] ?? 0) / pivot;
        rows[i] = (rows[i] ?? []).map((value, j) => value - factor * (rows[k]?.[j] ?? 0));
      }
    }
    expect(Math.min(...pivots)).toBeGreaterThan(0.1);
  });

  test("are lengths of bodies: three standard deviations stay within what is plausible", () => {
    figures.dimensions.forEach((dimension, i) => {
      const limits = plausibleLimits(dimension, "adult");
      const [mean = 0, sd = 0] = [figures.meanMm[i], figures.sdMm[i]];
      expect(mean - 3 * sd).toBeGreaterThan(limits.from);
      expect(mean + 3 * sd).toBeLessThan(limits.to);
    });
  });

  test("say between which statures they were found", () => {
    const { from, to } = figures.surveyedStatureMm;
    const [mean = 0, sd = 0] = [figures.meanMm[0], figures.sdMm[0]];
    expect(figures.dimensions[0]).toBe("stature");
    // The extremes of a thousand or two normal people lie 3 to 4 standard deviations out.
    for (const distance of [mean - from, to - mean]) {
      expect(distance / sd).toBeGreaterThan(2.9);
      expect(distance / sd).toBeLessThan(4);
    }
  });
});

test("men are taller and longer in the back, as surveys find", () => {
  menReference.meanMm.forEach((mean, i) => {
    expect(mean).toBeGreaterThan(womenReference.meanMm[i] ?? Number.POSITIVE_INFINITY);
  });
});
