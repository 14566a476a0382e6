import { planReadings } from "@tapewise/measurement";
import { normalQuantile } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("planReadings", () => {
  test("for a standard uncertainty", () => {
    // 64/(25 − 9) = 4
    expect(planReadings({ perReadingMm: 8, lastingMm: 3 }, { standardMm: 5 })).toMatchObject({
      isReachable: true,
      count: 4,
    });
  });

  test("for an expanded one", () => {
    const expandedMm = 5 * normalQuantile(0.975) + 1e-9;
    const plan = planReadings({ perReadingMm: 8, lastingMm: 3 }, { expandedMm, probability: 0.95 });
    expect(plan).toMatchObject({ isReachable: true, count: 4, uncertaintyMm: 5 });
  });

  test("few degrees of freedom take more readings", () => {
    const error = { perReadingMm: 8, lastingMm: 0 };
    const target = { expandedMm: 8, probability: 0.95 };
    // Known: (1.96 · 8/8)² = 3.84, so 4. With 4 degrees of freedom: 2.776² = 7.71, so 8.
    expect(planReadings(error, target)).toMatchObject({ count: 4 });
    expect(planReadings({ ...error, perReadingDegreesOfFreedom: 4 }, target)).toMatchObject({ count: 8 });
  });

  test("says what stays when readings cannot help", () => {
    expect(planReadings({ perReadingMm: 8, lastingMm: 6 }, { standardMm: 6 })).toEqual({
      isReachable: false,
      reason: "lasting",
      floorMm: 6,
    });
    const expanded = planReadings(
      { perReadingMm: 8, lastingMm: 6, lastingDegreesOfFreedom: 4 },
      { expandedMm: 13, probability: 0.95 },
    );
    // t of 4 degrees of freedom is 2.776445…, times 6 is 16.7; the normal one would do with 11.8.
    expect(expanded).toMatchObject({ isReachable: false, reason: "lasting" });
    expect(expanded.isReachable ? 0 : expanded.floorMm).toBeCloseTo(2.7764451051977987 * 6, 10);
  });

  test("says when nobody would read so often", () => {
    const error = { perReadingMm: 8, lastingMm: 3 };
    // 64/(3.01² − 9) = 1064.9…
    const target = { standardMm: 3.01 };
    expect(planReadings(error, target)).toEqual({ isReachable: false, reason: "too-many", floorMm: 3 });
    expect(planReadings(error, target, 2000)).toMatchObject({ isReachable: true, count: 1065 });
    expect(
      planReadings({ ...error, perReadingDegreesOfFreedom: 10 }, { expandedMm: 6.1, probability: 0.95 }, 5),
    ).toMatchObject({ isReachable: false, reason: "too-many" });
  });

  test.each([
    [{ perReadingMm: -8, lastingMm: 3 }, { standardMm: 5 }, 10, "perReadingMm"],
    [
      { perReadingMm: 8, lastingMm: 3, lastingDegreesOfFreedom: 0 },
      { standardMm: 5 },
      10,
      "lastingDegreesOfFreedom",
    ],
    [{ perReadingMm: 8, lastingMm: 3 }, { standardMm: 0 }, 10, "target.standardMm"],
    [
      { perReadingMm: 8, lastingMm: 3 },
      { expandedMm: Number.NaN, probability: 0.9 },
      10,
      "target.expandedMm",
    ],
    [{ perReadingMm: 8, lastingMm: 3 }, { expandedMm: 5, probability: 1 }, 10, "target.probability"],
    [{ perReadingMm: 8, lastingMm: 3 }, { standardMm: 5 }, 0, "mostReadings"],
  ])("refuses %o, %o, %i", (error, target, most, argument) => {
    expect(() => planReadings(error, target, most)).toThrow(`${argument} must be`);
  });
});
