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

  test("refuses what is no set of groups", () => {
    expect(() => oneWayAnova([[1, 2]])).toThrow(InvalidArgumentError);
    expect(() => oneWayAnova([[1], [2]])).toThrow("a group of two values or more");
    expect(() => oneWayAnova([[1, 2], []])).toThrow("groups[1]");
    expect(() => oneWayAnova([[1, 2], [Number.NaN]])).toThrow("groups[1][0]");
  });
});
