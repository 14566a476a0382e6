import { grubbsCriticalValue, grubbsTest } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("grubbsCriticalValue", () => {
  test("for three values has a closed form", () => {
    // With one degree of freedom t = cot(π p), p = α/6, and G = 2/√3 · √(t²/(1 + t²)) = 2/√3 · cos(π α/6).
    for (const alpha of [0.001, 0.05, 0.1, 0.5]) {
      expect(grubbsCriticalValue(3, alpha)).toBeCloseTo(
        (2 / Math.sqrt(3)) * Math.cos((Math.PI * alpha) / 6),
        13,
      );
    }
  });

  test("stays below the largest G that n values can have, (n−1)/√n", () => {
    for (const count of [3, 4, 10, 100, 10_000]) {
      expect(grubbsCriticalValue(count, 1e-12)).toBeLessThanOrEqual((count - 1) / Math.sqrt(count));
    }
    expect(grubbsCriticalValue(3, 1e-300)).toBeCloseTo(2 / Math.sqrt(3), 14);
  });

  test("is reached by the stated share of normal samples", () => {
    const random = createRandom(1950);
    const trials = 20_000;
    for (const [count, alpha] of [
      [3, 0.05],
      [6, 0.05],
      [12, 0.1],
    ] as const) {
      let hits = 0;
      for (let i = 0; i < trials; i += 1) {
        const values = Array.from({ length: count }, () => random.normal());
        if (grubbsTest(values, alpha).isOutlier) hits += 1;
      }
      // Four standard deviations of a binomial count.
      expect(Math.abs(hits - trials * alpha)).toBeLessThan(4 * Math.sqrt(trials * alpha * (1 - alpha)));
    }
  });

  test.each([
    [2, 0.05, "count"],
    [3.5, 0.05, "count"],
    [Number.NaN, 0.05, "count"],
    [Number.POSITIVE_INFINITY, 0.05, "count"],
    [5, 0, "significance"],
    [5, 1, "significance"],
    [5, Number.NaN, "significance"],
  ])("refuses %f values at %f", (count, significance, argument) => {
    expect(() => grubbsCriticalValue(count, significance)).toThrow(InvalidArgumentError);
    expect(() => grubbsCriticalValue(count, significance)).toThrow(`${argument} must be`);
  });
});

describe("grubbsTest", () => {
  test("measures the farthest value in sample standard deviations", () => {
    // Mean 2, squares 4 + 0 + 0 + 0 + 4 over 4: s = √2, G = 2/√2 = √2.
    expect(grubbsTest([0, 2, 2, 2, 4], 0.05)).toMatchObject({ index: 0, isOutlier: false });
    expect(grubbsTest([0, 2, 2, 2, 4], 0.05).statistic).toBeCloseTo(Math.SQRT2, 14);
  });

  test("finds the value far below as well as the one far above", () => {
    expect(grubbsTest([432, 380, 434, 433, 431], 0.05)).toMatchObject({ index: 1, isOutlier: true });
    expect(grubbsTest([432, 434, 433, 431, 480], 0.05)).toMatchObject({ index: 4, isOutlier: true });
  });

  test("values that do not differ have no outlier", () => {
    expect(grubbsTest([432, 432, 432], 0.05)).toMatchObject({ index: 0, statistic: 0, isOutlier: false });
    expect(grubbsTest([0.1, 0.1, 0.1, 0.1], 0.05).isOutlier).toBe(false);
  });

  test("refuses what it cannot test", () => {
    expect(() => grubbsTest([1, 2], 0.05)).toThrow(InvalidArgumentError);
    expect(() => grubbsTest([1, 2, Number.NaN], 0.05)).toThrow(InvalidArgumentError);
    expect(() => grubbsTest([1, 2, 3], 2)).toThrow(InvalidArgumentError);
  });
});
