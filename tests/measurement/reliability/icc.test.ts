import { type IccForm, intraclassCorrelations } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const table = [
  [430, 434, 431],
  [446, 452, 447],
  [410, 415, 414],
  [421, 424, 420],
];

describe("intraclassCorrelations", () => {
  test("measurers who agree exactly have correlations of 1, to the end of the interval", () => {
    const { icc } = intraclassCorrelations([
      [1, 1],
      [2, 2],
      [4, 4],
    ]);
    for (const { value, lower, upper, f, pValue } of Object.values(icc)) {
      expect([value, lower, upper, f, pValue]).toEqual([1, 1, 1, Number.POSITIVE_INFINITY, 0]);
    }
  });

  test("a lasting difference costs agreement and not consistency", () => {
    const shifted = table.map(([a = 0, b = 0, c = 0]) => [a + 20, b, c]);
    const [before, after] = [intraclassCorrelations(table).icc, intraclassCorrelations(shifted).icc];
    expect(after["3,1"].value).toBeCloseTo(before["3,1"].value, 13);
    expect(after["2,1"].value).toBeLessThan(before["2,1"].value);
  });

  test("subjects who differ less than readings do have a negative correlation, no less than −1/(k − 1)", () => {
    const { icc } = intraclassCorrelations([
      [1, 9],
      [9, 2],
      [2, 8],
      [8, 1],
    ]);
    for (const form of ["1,1", "3,1"] as const) {
      expect(icc[form].value).toBeLessThan(0);
      expect(icc[form].value).toBeGreaterThanOrEqual(-1);
    }
    for (const { form, lower, value, upper } of Object.values(icc)) {
      // The single correlation of form 2 is below −1 here to the end of its interval, and that of means is nowhere.
      if (form === "2,k") continue;
      expect(lower).toBeLessThan(value);
      expect(value).toBeLessThan(upper);
    }
  });

  test("a single correlation that may be below −1/(k − 1) leaves that of means without a lower end", () => {
    const { icc } = intraclassCorrelations([
      [66, 95],
      [37, 17],
      [37, 37],
    ]);
    // By Spearman and Brown 2ρ/(1 + ρ) falls without end as ρ comes down to −1.
    expect(icc["2,1"].lower).toBeLessThan(-1);
    expect(icc["2,k"].lower).toBe(Number.NEGATIVE_INFINITY);
    expect(icc["2,k"].upper).toBeGreaterThan(icc["2,k"].value);
    expect(icc["2,k"].upper).toBeLessThan(1);
  });

  test("a single correlation below −1/(k − 1) has no correlation of means, and none above 1", () => {
    const { anova, icc } = intraclassCorrelations([
      [10, 20],
      [21, 10],
    ]);
    // Means of rows 15 and 15.5, of columns 15.5 and 15; every residual is ±5.25.
    expect([anova.subjects, anova.measurers, anova.residual].map((line) => line.meanSquare)).toEqual([
      0.25, 0.25, 110.25,
    ]);
    // (0.25 − 110.25) / (0.25 + 110.25 − 110) = −220
    expect(icc["2,1"].value).toBeCloseTo(-220, 9);
    expect(icc["2,k"].value).toBe(Number.NEGATIVE_INFINITY);
  });

  test("a negative correlation lies in its interval, however few the degrees of freedom of its error", () => {
    const { value, lower, upper } = intraclassCorrelations([
      [430.5735, 432.5065],
      [429.0232, 433.5926],
    ]).icc["2,1"];
    expect(value).toBeLessThan(0);
    expect(lower).toBeLessThan(value);
    expect(upper).toBeGreaterThan(value);
  });

  test("a lower confidence gives a narrower interval about the same value", () => {
    const [wide, narrow] = [
      intraclassCorrelations(table),
      intraclassCorrelations(table, { confidence: 0.5 }),
    ];
    for (const form of Object.keys(wide.icc) as IccForm[]) {
      expect(narrow.icc[form].value).toBe(wide.icc[form].value);
      expect(narrow.icc[form].lower).toBeGreaterThan(wide.icc[form].lower);
      expect(narrow.icc[form].upper).toBeLessThan(wide.icc[form].upper);
    }
  });

  test("refuses subjects who are all alike, and options out of range", () => {
    expect(() =>
      intraclassCorrelations([
        [430, 434],
        [430, 434],
      ]),
    ).toThrow("differ between subjects");
    // The third decimal of no double is exact: what rounding leaves is no difference either.
    expect(() =>
      intraclassCorrelations([
        [0.1, 0.3, 0.2],
        [0.3, 0.2, 0.1],
      ]),
    ).toThrow(InvalidArgumentError);
    expect(() => intraclassCorrelations(table, { confidence: 1 })).toThrow("options.confidence");
  });
});
