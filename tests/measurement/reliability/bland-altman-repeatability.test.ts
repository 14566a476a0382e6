import { repeatabilityCoefficient } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const table = [
  [430, 433],
  [446, 442],
  [412, 412],
];

describe("repeatabilityCoefficient", () => {
  test("about zero and about the mean, by hand", () => {
    // Differences −3, 4, 0: squares 25, mean 1/3, squares about it 25 − 1/3.
    const zero = repeatabilityCoefficient(table, { multiplier: 2 });
    expect(zero.coefficient.value).toBeCloseTo(2 * Math.sqrt(25 / 3), 12);
    expect(zero.degreesOfFreedom).toBe(3);
    const mean = repeatabilityCoefficient(table, { multiplier: 2, about: "mean" });
    expect(mean.coefficient.value).toBeCloseTo(2 * Math.sqrt((25 - 1 / 3) / 2), 12);
    expect(mean.degreesOfFreedom).toBe(2);
  });

  test("three readings each", () => {
    // Squares about own means: 2 + 0 on 4 degrees of freedom.
    const { withinSd, coefficient } = repeatabilityCoefficient([
      [430, 431, 432],
      [440, 440, 440],
    ]);
    expect(withinSd).toBeCloseTo(Math.sqrt(2 / 4), 14);
    expect(coefficient.value).toBeCloseTo(1.96 * Math.SQRT2 * withinSd, 14);
    expect(coefficient.lower).toBeLessThan(coefficient.value);
    expect(coefficient.upper).toBeGreaterThan(coefficient.value);
  });

  test("readings that repeat exactly have the coefficient 0", () => {
    expect(repeatabilityCoefficient([[430, 430]]).coefficient).toEqual({ value: 0, lower: 0, upper: 0 });
  });

  test("refuses other tables and conventions", () => {
    expect(() => repeatabilityCoefficient([])).toThrow("1 rows");
    expect(() => repeatabilityCoefficient([[430, 431]], { about: "mean" })).toThrow("2 rows");
    expect(() => repeatabilityCoefficient([[430]])).toThrow("two readings");
    expect(() => repeatabilityCoefficient([[430, 431], [430]])).toThrow("table[1]");
    expect(() => repeatabilityCoefficient(table, { multiplier: -1 })).toThrow("options.multiplier");
    // @ts-expect-error: no such convention
    expect(() => repeatabilityCoefficient(table, { about: "median" })).toThrow("options.about");
  });
});
