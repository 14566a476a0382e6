import { type AveragingLesson, expectedMeanError, simulateAveraging } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const lesson: AveragingLesson = {
  lengthMm: 436,
  error: { biasMm: 0, lastingMm: 0, noiseMm: 6, stepMm: 0 },
  seed: 1,
};

describe("simulateAveraging", () => {
  test("runs from one to ten readings where nobody says otherwise", () => {
    const results = simulateAveraging(lesson);
    expect(results.map(({ count }) => count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(results[0]?.mean.valuesMm.length).toBe(2000);
  });

  test("the same seed gives the same figures", () => {
    expect(simulateAveraging(lesson)).toEqual(simulateAveraging(lesson));
    expect(simulateAveraging({ ...lesson, seed: 2 })).not.toEqual(simulateAveraging(lesson));
  });

  test("without slips the mean beats the median, with slips the median beats the mean", () => {
    const clean = simulateAveraging({ ...lesson, counts: [5], runs: 4000 })[0];
    // The variance of the median of five normal values is 0.2868 σ² (H. Ruben 1954; from memory), of the mean 0.2 σ².
    expect((clean?.median.sdMm ?? 0) / (clean?.mean.sdMm ?? 1)).toBeCloseTo(Math.sqrt(0.2868 / 0.2), 1);
    const slip = { chance: 0.1, sizeMm: 40, direction: "longer" } as const;
    const slipping = simulateAveraging({
      ...lesson,
      error: { ...lesson.error, slip },
      counts: [5],
      runs: 4000,
    })[0];
    expect(slipping?.median.rmseMm).toBeLessThan(0.8 * (slipping?.mean.rmseMm ?? 0));
    expect(slipping?.median.biasMm).toBeLessThan(0.6 * (slipping?.mean.biasMm ?? 0));
  });

  test("of one reading mean and median are the same", () => {
    const [one] = simulateAveraging({ ...lesson, counts: [1], runs: 100 });
    expect(one?.median).toEqual(one?.mean);
  });

  test("rounding that all readings share does not average out", () => {
    // The length 436 lies 1 mm above the mark at 435; with hardly any noise every reading is 435.
    const error = { ...lesson.error, noiseMm: 0.1, stepMm: 5 };
    const many = simulateAveraging({ ...lesson, error, counts: [20], runs: 200 })[0];
    expect(many?.mean).toMatchObject({ biasMm: -1, sdMm: 0, rmseMm: 1 });
  });

  test("more readings pick the wrong size less often, but a bias keeps picking it", () => {
    const sizes = [
      { from: 400, to: 440 },
      { from: 440, to: 480 },
    ];
    const wrongOf = (biasMm: number) =>
      simulateAveraging({
        ...lesson,
        error: { ...lesson.error, biasMm },
        counts: [1, 3, 5],
        runs: 4000,
        sizes,
      }).map(({ mean }) => mean.wrongShare ?? Number.NaN);
    // Φ(−4/6), Φ(−4√3/6), Φ(−4√5/6) = 0.2525, 0.1241, 0.0680 (recomputed with mpmath 1.3); √(p(1 − p)/4000) ≤ 0.007.
    for (const [i, exact] of [0.25249, 0.12411, 0.068].entries()) {
      expect(Math.abs((wrongOf(0)[i] ?? Number.NaN) - exact)).toBeLessThan(0.028);
    }
    const biased = wrongOf(8);
    // The mean of the readings lies in the wrong size: the more, the surer.
    expect(biased[2]).toBeGreaterThan(biased[0] ?? 1);
  });

  test("agrees with what is expected without drawing", () => {
    const error = {
      biasMm: 3,
      lastingMm: 4,
      noiseMm: 6,
      stepMm: 5,
      slip: { chance: 0.1, sizeMm: 20, direction: "longer" as const },
    };
    const runs = 4000;
    for (const { count, mean } of simulateAveraging({ ...lesson, error, counts: [1, 3, 9], runs })) {
      const expected = expectedMeanError(error, count);
      expect(Math.abs(mean.biasMm - expected.biasMm)).toBeLessThan((4 * expected.sdMm) / Math.sqrt(runs));
      // With slips the kurtosis is below 5.
      expect(Math.abs(mean.sdMm / expected.sdMm - 1)).toBeLessThan(4 * Math.sqrt(1 / runs));
    }
  });

  test.each([
    [{ lengthMm: Number.NaN }, "lengthMm"],
    [{ error: { ...lesson.error, noiseMm: -1 } }, "error.noiseMm"],
    [{ counts: [0] }, "counts[0]"],
    [{ runs: 1 }, "runs"],
    [{ seed: Number.NaN }, "seed"],
    [{ sizes: [{ from: 2, to: 1 }] }, "sizes[0]"],
  ])("refuses %o", (change, argument) => {
    expect(() => simulateAveraging({ ...lesson, ...change })).toThrow(`${argument} must be`);
  });
});
