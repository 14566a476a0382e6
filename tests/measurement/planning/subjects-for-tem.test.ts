import { subjectsForTem, temBounds } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

describe("temBounds", () => {
  test("two degrees of freedom: χ² is −2 ln of a share", () => {
    // One subject read three times, 50 %: χ² = −2 ln 0.75 and −2 ln 0.25.
    const { lower, upper } = temBounds(1, 3, 0.5);
    expect(lower).toBeCloseTo(Math.sqrt(2 / (-2 * Math.log(0.25))), 13);
    expect(upper).toBeCloseTo(Math.sqrt(2 / (-2 * Math.log(0.75))), 13);
  });

  test.each([
    [0, 2, 0.95, "subjects"],
    [5, 1, 0.95, "repeats"],
    [5, 2, 1, "probability"],
  ])("refuses %i, %i, %f", (subjects, repeats, probability, argument) => {
    expect(() => temBounds(subjects, repeats, probability)).toThrow(`${argument} must be`);
  });
});

describe("subjectsForTem", () => {
  test("is the first number that is enough", () => {
    const subjects = subjectsForTem({ repeats: 2, precision: 0.3, probability: 0.9 });
    expect(temBounds(subjects, 2, 0.9).upper).toBeLessThanOrEqual(1.3);
    expect(temBounds(subjects - 1, 2, 0.9).upper).toBeGreaterThan(1.3);
  });

  test("one subject is enough for hardly any precision", () => {
    expect(subjectsForTem({ repeats: 2, precision: 100 })).toBe(1);
  });

  test.each([
    [{ repeats: 1, precision: 0.2 }, "repeats"],
    [{ repeats: 2, precision: 0 }, "precision"],
    [{ repeats: 2, precision: 1e-9 }, "precision"],
    [{ repeats: 2, precision: 0.2, probability: 0 }, "probability"],
  ])("refuses %o", (plan, argument) => {
    expect(() => subjectsForTem(plan)).toThrow(`${argument} must be`);
  });
});
