import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalDistribution, skewNormalDistribution } from "@tapewise/population";
import { createRandom, normalCdf, normalUpperTail } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("skewNormalDistribution", () => {
  test("of shape 0 is the normal distribution", () => {
    const flat = skewNormalDistribution({ location: 400, scale: 20, shape: 0 });
    const normal = normalDistribution({ mean: 400, sd: 20 });
    for (const x of [300, 395, 400, 470]) {
      expect(flat.density(x)).toBeCloseTo(normal.density(x), 16);
      expect(flat.cumulative(x)).toBeCloseTo(normal.cumulative(x), 15);
    }
    expect([flat.mean, flat.sd, flat.skewness]).toEqual([400, 20, 0]);
    expect(flat.quantile(0.9)).toBeCloseTo(normal.quantile(0.9), 9);
  });

  test("of shape 1 has Φ² for its distribution function", () => {
    const unit = skewNormalDistribution({ location: 0, scale: 1, shape: 1 });
    for (const z of [-3, -0.5, 0, 1, 2.5]) {
      expect(unit.cumulative(z) / normalCdf(z) ** 2).toBeCloseTo(1, 12);
      expect(unit.upperTail(z)).toBeCloseTo(1 - normalCdf(z) ** 2, 15);
    }
    // √(1/π), 1 − 1/π
    expect(unit.mean).toBeCloseTo(Math.sqrt(1 / Math.PI), 15);
    expect(unit.variance).toBeCloseTo(1 - 1 / Math.PI, 15);
  });

  test("of a great shape is half a normal distribution", () => {
    const half = skewNormalDistribution({ location: 0, scale: 1, shape: 1e6 });
    expect(half.upperTail(1)).toBeCloseTo(2 * normalUpperTail(1), 12);
    expect(half.cumulative(-0.1)).toBeLessThan(1e-100);
    expect(half.skewness).toBeCloseTo(0.9952717, 6);
    expect(half.quantile(0.5)).toBeCloseTo(0.6744897501960817, 6);
  });

  test("has its quantiles where its distribution function says, at both ends too", () => {
    const girth = skewNormalDistribution({ location: 760, scale: 142, shape: 2 });
    for (const p of [1e-12, 1e-4, 0.01, 0.3, 0.5, 0.8, 0.999]) {
      expect(girth.cumulative(girth.quantile(p)) / p).toBeCloseTo(1, 11);
    }
    expect(girth.quantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(girth.quantile(1)).toBe(Number.POSITIVE_INFINITY);
    const middle = girth.probability(interval(700, 900));
    expect(middle).toBeCloseTo(girth.cumulative(900) - girth.cumulative(700), 14);
    expect(girth.probability(interval(1300, 1400)) / (girth.upperTail(1300) - girth.upperTail(1400))).toBe(1);
    expect(girth.density(Number.POSITIVE_INFINITY)).toBe(0);
  });

  test("draws people with its mean and skewness", () => {
    const girth = skewNormalDistribution({ location: 760, scale: 142, shape: 4 });
    const random = createRandom(11);
    const people = Array.from({ length: 20_000 }, () => girth.sample(random));
    const mean = people.reduce((sum, x) => sum + x, 0) / people.length;
    const third = people.reduce((sum, x) => sum + ((x - girth.mean) / girth.sd) ** 3, 0) / people.length;
    // Four standard errors: s/√n, and √(15/n) or so for the third moment.
    expect(Math.abs(mean - girth.mean)).toBeLessThan((4 * girth.sd) / Math.sqrt(20_000));
    expect(Math.abs(third - girth.skewness)).toBeLessThan(4 * Math.sqrt(24 / 20_000));
  });

  test.each([
    [{ location: Number.NaN, scale: 1, shape: 0 }],
    [{ location: 0, scale: 0, shape: 0 }],
    [{ location: 0, scale: 1, shape: Number.NaN }],
    [{ location: 0, scale: 1, shape: 2e6 }],
  ])("refuses %o", (parameters) => {
    expect(() => skewNormalDistribution(parameters)).toThrow(InvalidArgumentError);
  });

  test("refuses NaN and shares that are none", () => {
    const unit = skewNormalDistribution({ location: 0, scale: 1, shape: 1 });
    expect(() => unit.cumulative(Number.NaN)).toThrow(InvalidArgumentError);
    expect(() => unit.quantile(-0.1)).toThrow(InvalidArgumentError);
  });
});
