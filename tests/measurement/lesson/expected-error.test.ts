import { expectedMeanError } from "@tapewise/measurement";
import { expect, test } from "vitest";

const exact = { biasMm: 0, lastingMm: 0, noiseMm: 0, stepMm: 0 };

test("noise shrinks, bias and what lasts stay", () => {
  // 12² + 10²/4 = 169
  const { sdMm, biasMm } = expectedMeanError({ biasMm: -4, lastingMm: 12, noiseMm: 10, stepMm: 0 }, 4);
  expect([sdMm, biasMm]).toEqual([13, -4]);
});

test("slips: a share p of s either way has the variance p s², to one side it is a bias too", () => {
  const slip = { chance: 0.25, sizeMm: 20, direction: "either" } as const;
  expect(expectedMeanError({ ...exact, slip }, 1)).toEqual({ biasMm: 0, sdMm: 10, rmseMm: 10 });
  // Mean −5, variance 0.25 · 400 − 25 = 75
  const shorter = expectedMeanError({ ...exact, slip: { ...slip, direction: "shorter" } }, 3);
  expect(shorter.biasMm).toBe(-5);
  expect(shorter.sdMm).toBe(5);
  expect(expectedMeanError({ ...exact, slip: { ...slip, direction: "longer" } }, 3).biasMm).toBe(5);
});

test("rounding without noise does not average out", () => {
  // q²/12 with q = 6
  expect(expectedMeanError({ ...exact, stepMm: 6 }, 100).sdMm).toBeCloseTo(Math.sqrt(3), 12);
  // With plenty of noise it does: (100 + 3)/100
  expect(expectedMeanError({ ...exact, noiseMm: 10, stepMm: 6 }, 100).sdMm).toBeCloseTo(Math.sqrt(1.03), 10);
});

test("refuses what is none", () => {
  expect(() => expectedMeanError(exact, 0)).toThrow("count must be");
  expect(() => expectedMeanError({ ...exact, stepMm: Number.NaN }, 1)).toThrow("error.stepMm must be");
});
