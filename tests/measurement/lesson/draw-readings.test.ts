import { drawReadings, type LessonError } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const error: LessonError = { biasMm: 3, lastingMm: 5, noiseMm: 6, stepMm: 5 };

describe("drawReadings", () => {
  test("the same seed gives the same series, and a longer one begins with it", () => {
    const short = drawReadings({ lengthMm: 436, error, count: 3, seed: 7 });
    const long = drawReadings({ lengthMm: 436, error, count: 8, seed: 7 });
    expect(long.readingsMm.slice(0, 3)).toEqual(short.readingsMm);
    expect(long.offsetMm).toBe(short.offsetMm);
    expect(drawReadings({ lengthMm: 436, error, count: 8, seed: 8 })).not.toEqual(long);
  });

  test("falls on the marks", () => {
    const { readingsMm } = drawReadings({ lengthMm: 436, error, count: 50, seed: 1 });
    expect(readingsMm.filter((mm) => mm % 5 !== 0)).toEqual([]);
    expect(new Set(readingsMm).size).toBeGreaterThan(3);
  });

  test("without noise every reading is off by the same", () => {
    const { readingsMm, offsetMm } = drawReadings({
      lengthMm: 436,
      error: { ...error, noiseMm: 0, stepMm: 0 },
      count: 4,
      seed: 2,
    });
    expect(readingsMm).toEqual(readingsMm.map(() => readingsMm[0]));
    expect(readingsMm[0]).toBeCloseTo(436 + offsetMm, 12);
  });

  test.each(["longer", "shorter", "either"] as const)("slips %s, about as often as told", (direction) => {
    const slip = { chance: 0.2, sizeMm: 20, direction };
    const exact: LessonError = { biasMm: 0, lastingMm: 0, noiseMm: 0, stepMm: 0, slip };
    const { readingsMm, slipsMm } = drawReadings({ lengthMm: 436, error: exact, count: 2500, seed: 3 });
    expect(readingsMm).toEqual(slipsMm.map((mm) => 436 + mm));
    const up = slipsMm.filter((mm) => mm === 20).length;
    const down = slipsMm.filter((mm) => mm === -20).length;
    expect(slipsMm.filter((mm) => mm === 0).length).toBe(2500 - up - down);
    // 500 expected, √(2500 · 0.2 · 0.8) = 20
    expect(Math.abs(up + down - 500)).toBeLessThan(80);
    if (direction === "longer") expect(down).toBe(0);
    else if (direction === "shorter") expect(up).toBe(0);
    // 250 each, √(2500 · 0.1 · 0.9) = 15
    else expect(Math.abs(up - 250)).toBeLessThan(60);
  });

  test.each([
    [{ lengthMm: Number.NaN }, "lengthMm"],
    [{ count: 0 }, "count"],
    [{ seed: 0.5 }, "seed"],
    [{ error: { ...error, noiseMm: -1 } }, "error.noiseMm"],
  ])("refuses %o", (change, argument) => {
    expect(() => drawReadings({ lengthMm: 436, error, count: 3, seed: 1, ...change })).toThrow(
      `${argument} must be`,
    );
  });
});
