import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalDistribution } from "@tapewise/population";
import { createRandom, normalCdf } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const torso = normalDistribution({ mean: 400, sd: 20 });

describe("normalDistribution", () => {
  test("counts in standard deviations from the mean", () => {
    expect(torso.cumulative(400)).toBe(0.5);
    expect(torso.cumulative(420)).toBe(normalCdf(1));
    expect(torso.upperTail(380)).toBe(normalCdf(1));
    // 1 / (20 √2π)
    expect(torso.density(400)).toBeCloseTo(0.019947114020071637, 15);
    expect(torso.quantile(0.5)).toBe(400);
    expect(torso.probability(interval(380, 420))).toBeCloseTo(2 * normalCdf(1) - 1, 15);
    expect([torso.mean, torso.sd, torso.variance, torso.skewness]).toEqual([400, 20, 400, 0]);
    expect([torso.family, torso.parameters]).toEqual(["normal", { mean: 400, sd: 20 }]);
  });

  test("keeps its digits far out", () => {
    // Φ(−10), printed in Abramowitz & Stegun's range of tables as 7.61985 × 10⁻²⁴.
    expect(torso.upperTail(600)).toBeCloseTo(0, 20);
    expect(torso.upperTail(600) / 7.61985302416e-24).toBeCloseTo(1, 10);
    expect(torso.probability(interval(600, Number.POSITIVE_INFINITY))).toBe(torso.upperTail(600));
  });

  test("has all of its share between the infinities", () => {
    expect(torso.quantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(torso.quantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(torso.cumulative(Number.NEGATIVE_INFINITY)).toBe(0);
    expect(torso.density(Number.POSITIVE_INFINITY)).toBe(0);
  });

  test("draws the same people from the same stream", () => {
    const draw = () => [1, 2, 3].map((i) => torso.sample(createRandom(7).fork(i)));
    expect(draw()).toEqual(draw());
    expect(torso.sample(createRandom(7))).toBe(400 + 20 * createRandom(7).normal());
  });

  test.each([
    [{ mean: Number.NaN, sd: 1 }],
    [{ mean: Number.POSITIVE_INFINITY, sd: 1 }],
    [{ mean: 0, sd: 0 }],
    [{ mean: 0, sd: -1 }],
    [{ mean: 0, sd: Number.NaN }],
  ])("refuses %o", (parameters) => {
    expect(() => normalDistribution(parameters)).toThrow(InvalidArgumentError);
  });

  test("refuses NaN and shares that are none", () => {
    expect(() => torso.cumulative(Number.NaN)).toThrow(InvalidArgumentError);
    expect(() => torso.density(Number.NaN)).toThrow(InvalidArgumentError);
    expect(() => torso.quantile(1.2)).toThrow(InvalidArgumentError);
  });
});
