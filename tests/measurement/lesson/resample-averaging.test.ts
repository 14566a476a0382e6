import { resampleAveraging } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const readingsMm = [428, 431, 433, 436, 436, 440, 441, 462];

describe("resampleAveraging", () => {
  test("one reading of the class has its mean and its spread", () => {
    const runs = 10_000;
    const [one, four] = resampleAveraging({ readingsMm, lengthMm: 430, counts: [1, 4], runs, seed: 1 });
    const mean = 3507 / 8;
    const variance = readingsMm.reduce((sum, mm) => sum + (mm - mean) ** 2, 0) / 8;
    expect(Math.abs((one?.mean.biasMm ?? 0) - (mean - 430))).toBeLessThan(4 * Math.sqrt(variance / runs));
    // The kurtosis of these eight is below 5: a variance is known to ±√(4/N) of itself.
    expect(Math.abs((one?.mean.sdMm ?? 0) ** 2 / variance - 1)).toBeLessThan(4 * Math.sqrt(4 / runs));
    expect(Math.abs((four?.mean.sdMm ?? 0) ** 2 / (variance / 4) - 1)).toBeLessThan(4 * Math.sqrt(4 / runs));
    // Only values that somebody read.
    expect(new Set(one?.mean.valuesMm)).toEqual(new Set(readingsMm));
  });

  test("without a length it is held against the mean of all", () => {
    const [one] = resampleAveraging({ readingsMm: [430, 440], counts: [1], seed: 2 });
    expect(new Set(one?.mean.valuesMm)).toEqual(new Set([430, 440]));
    expect(one?.mean.rmseMm).toBe(5);
  });

  test("the same seed gives the same figures", () => {
    const lesson = { readingsMm, seed: 3, runs: 50 };
    expect(resampleAveraging(lesson)).toEqual(resampleAveraging(lesson));
  });

  test("tells how often the wrong size would be picked", () => {
    const sizes = [
      { from: 400, to: 450 },
      { from: 450, to: 500 },
    ];
    const [one, nine] = resampleAveraging({ readingsMm, lengthMm: 436, sizes, counts: [1, 9], seed: 4 });
    // One in eight readings is above 450: 2000 runs, √(2000 · 7/64) = 14.8
    expect(Math.abs((one?.mean.wrongShare ?? 0) * 2000 - 250)).toBeLessThan(60);
    expect(nine?.mean.wrongShare).toBeLessThan(0.02);
  });

  test.each([
    [{ readingsMm: [430] }, "readingsMm"],
    [{ readingsMm: [430, Number.NaN] }, "readingsMm[1]"],
    [{ lengthMm: Number.POSITIVE_INFINITY }, "lengthMm"],
    [{ counts: [] }, "counts"],
    [{ counts: [1, 1] }, "counts"],
    [{ counts: [1001] }, "counts[0]"],
    [{ runs: 1 }, "runs"],
    [{ sizes: [] }, "sizes"],
  ])("refuses %o", (change, argument) => {
    expect(() => resampleAveraging({ readingsMm, seed: 1, ...change })).toThrow(`${argument} must be`);
  });
});
