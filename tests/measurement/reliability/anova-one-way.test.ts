import { oneWayAnova } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("oneWayAnova", () => {
  test("by hand, groups of unequal size", () => {
    // Means 2, 6 and 7; grand mean (1+3+5+7+6+7)/6 = 29/6 with the third group a single value.
    const { mean, between, within, f, rSquared } = oneWayAnova([[1, 3], [5, 7, 6], [7]]);
    expect(mean).toBeCloseTo(29 / 6, 14);
    // 2 (2 − 29/6)² + 3 (6 − 29/6)² + (7 − 29/6)² = (2·289 + 3·49 + 169)/36 = 894/36
    expect(between.sumOfSquares).toBeCloseTo(894 / 36, 12);
    expect(within.sumOfSquares).toBeCloseTo(4, 13);
    expect([between.degreesOfFreedom, within.degreesOfFreedom]).toEqual([2, 3]);
    expect(f).toBeCloseTo(894 / 72 / (4 / 3), 12);
    expect(rSquared).toBeCloseTo(894 / 36 / (894 / 36 + 4), 13);
  });

  test("groups without scatter have no F, values that are all the same no R² either", () => {
    const flat = oneWayAnova([
      [4, 4],
      [5, 5],
    ]);
    expect([flat.f, flat.pValue, flat.rSquared, flat.residualSd]).toEqual([undefined, undefined, 1, 0]);
    expect(oneWayAnova([[4, 4], [4]]).rSquared).toBeUndefined();
  });

  test("loses nothing of decimals that doubles cannot hold", () => {
    // Twice ±0.1 about 0.4 and twice ±0.1 about 0.6: within 4 · 0.01, between 4 · 0.1².
    const base = 1_000_000_000_000;
    const { within, between } = oneWayAnova([
      [base + 0.3, base + 0.5],
      [base + 0.5, base + 0.7],
    ]);
    expect(within.sumOfSquares).toBeCloseTo(0.04, 15);
    expect(between.sumOfSquares).toBeCloseTo(0.04, 15);
  });

  test("takes values of any size whose squares are numbers", () => {
    // Differences of 2e100 and 2e-200: 2 (1e100)² within the first group, nothing that shows in the second.
    const { within } = oneWayAnova([
      [1e100, 3e100],
      [1e-200, 3e-200],
    ]);
    expect(within.sumOfSquares).toBeCloseTo(2e200, -187);
    expect(() => oneWayAnova([[1e308, -1e308], [0]])).toThrow(InvalidArgumentError);
  });

  test("refuses what is no set of groups", () => {
    expect(() => oneWayAnova([[1, 2]])).toThrow(InvalidArgumentError);
    expect(() => oneWayAnova([[1], [2]])).toThrow("a group of two values or more");
    expect(() => oneWayAnova([[1, 2], []])).toThrow("groups[1]");
    expect(() => oneWayAnova([[1, 2], [Number.NaN]])).toThrow("groups[1][0]");
  });
});
