import { createRandom, summarise } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { scatterBehind, shownVariance } from "../../packages/measurement/src/scatter-behind.ts";

describe("shownVariance", () => {
  test("is the mean sample variance of simulated rounded readings", () => {
    const random = createRandom(1898);
    for (const [scatter, step] of [
      [4, 25.4],
      [1, 10],
      [6, 1],
    ] as const) {
      const sets = 20_000;
      const variances = Array.from({ length: sets }, () => {
        const length = 430 + step * random.uniform();
        const values = [1, 2, 3].map(() => step * Math.round((length + scatter * random.normal()) / step));
        return (summarise(values).sd ?? 0) ** 2;
      });
      const { mean, sd = 0 } = summarise(variances);
      expect(Math.abs(shownVariance(scatter ** 2, step) - mean)).toBeLessThan((4 * sd) / Math.sqrt(sets));
    }
  });

  test("is scatter plus a twelfth of the squared step where readings scatter over several marks (Sheppard)", () => {
    expect(shownVariance(36, 2)).toBeCloseTo(36 + 4 / 12, 12);
    expect(shownVariance(36, 0)).toBe(36);
    expect(shownVariance(0, 10)).toBe(0);
  });

  test("is σ q/√π where readings hardly scatter: the chance to part times the squared step", () => {
    expect(shownVariance(0.01 ** 2, 1)).toBeCloseTo(0.01 / Math.sqrt(Math.PI), 14);
  });
});

describe("scatterBehind", () => {
  test.each([0.0001, 0.01, 1, 3, 4, 6, 12, 100])("finds the scatter of %f mm again", (scatter) => {
    for (const step of [0, 0.1, 1, 10, 25.4]) {
      const found = scatterBehind(shownVariance(scatter ** 2, step), step);
      expect(Math.sqrt(found) / scatter).toBeCloseTo(1, 9);
    }
  });

  test("never goes below zero, and only nothing shown means no scatter", () => {
    expect(scatterBehind(0, 25.4)).toBe(0);
    expect(scatterBehind(10, 25.4)).toBeGreaterThan(0);
    // For little scatter the shown variance is σ q/√π, so σ = 10 √π / 25.4 = 0.698.
    expect(Math.sqrt(scatterBehind(10, 25.4))).toBeCloseTo((10 * Math.sqrt(Math.PI)) / 25.4, 9);
  });
});
