import { twoWayAnova } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

describe("twoWayAnova", () => {
  test("by hand", () => {
    // Rows 1 2 3 and 5 9 7: row means 2 and 7, column means 3, 5.5 and 5, grand mean 4.5.
    const { mean, subjects, measurers, residual, within } = twoWayAnova([
      [1, 2, 3],
      [5, 9, 7],
    ]);
    expect(mean).toBe(4.5);
    expect(subjects.sumOfSquares).toBeCloseTo(3 * 2 * 2.5 ** 2, 13);
    expect(measurers.sumOfSquares).toBeCloseTo(2 * (1.5 ** 2 + 1 + 0.5 ** 2), 13);
    // Residuals 0.5, −1, 0.5 and their negatives.
    expect(residual.sumOfSquares).toBeCloseTo(2 * (0.25 + 1 + 0.25), 13);
    expect(within.sumOfSquares).toBeCloseTo(2 + 8, 13);
    expect([subjects, measurers, residual, within].map((line) => line.degreesOfFreedom)).toEqual([
      1, 2, 2, 4,
    ]);
  });

  test("a level of a million does not cost digits", () => {
    const low = twoWayAnova([
      [0.25, 0.5],
      [0.75, 2],
      [1, 1.5],
    ]);
    const high = twoWayAnova([
      [2 ** 30 + 0.25, 2 ** 30 + 0.5],
      [2 ** 30 + 0.75, 2 ** 30 + 2],
      [2 ** 30 + 1, 2 ** 30 + 1.5],
    ]);
    for (const line of ["subjects", "measurers", "residual", "within"] as const) {
      expect(high[line].sumOfSquares).toBeCloseTo(low[line].sumOfSquares, 14);
    }
  });

  test("refuses a table with a gap", () => {
    expect(() => twoWayAnova([[1, 2], [3]])).toThrow("table[1]");
    expect(() =>
      twoWayAnova([
        [1, 2],
        [3, Number.POSITIVE_INFINITY],
      ]),
    ).toThrow("table[1][1]");
    expect(() => twoWayAnova([[1, 2]])).toThrow("two rows");
    expect(() => twoWayAnova([[1], [2]])).toThrow("two values");
  });
});
