import { fc, test } from "@fast-check/vitest";
import { interval } from "@tapewise/intervals";
import {
  empiricalDistribution,
  mixtureDistribution,
  normalDistribution,
  owensT,
  skewNormalDistribution,
  truncatedNormal,
} from "@tapewise/population";
import { createRandom, normalUpperTail } from "@tapewise/statistics";
import { describe, expect } from "vitest";
import { between, continuous } from "./population-models-arbitraries.ts";

const share = between(1e-6, 1 - 1e-6);
const runs = { numRuns: 60 };

describe("every continuous family", () => {
  test.prop([continuous, share], runs)(
    "law: a quantile is where the distribution function reaches it",
    (d, p) => {
      expect(d.cumulative(d.quantile(p))).toBeCloseTo(p, 9);
    },
  );

  test.prop([continuous, share], runs)("law: what is not below is above", (d, p) => {
    const x = d.quantile(p);
    expect(d.cumulative(x) + d.upperTail(x)).toBeCloseTo(1, 12);
  });

  test.prop([continuous, share, share], runs)("law: a greater share has no smaller quantile", (d, p, q) => {
    const [low, high] = p < q ? [p, q] : [q, p];
    expect(d.quantile(low)).toBeLessThanOrEqual(d.quantile(high));
  });

  test.prop([continuous, share, share, share], runs)(
    "law: an interval parted in two has the sum",
    (d, p, q, r) => {
      const [a = 0, b = 0, c = 0] = [p, q, r].map((each) => d.quantile(each)).sort((x, y) => x - y);
      const parts = d.probability(interval(a, b)) + d.probability(interval(b, c));
      expect(parts).toBeCloseTo(d.probability(interval(a, c)), 11);
    },
  );

  test.prop([continuous, between(0.02, 0.98)], runs)(
    "law: the density is the slope of the shares",
    (d, p) => {
      const x = d.quantile(p);
      const step = d.sd * 1e-5;
      // Inside its bounds a truncated distribution is smooth too.
      fc.pre(d.cumulative(x - step) > 0 && d.upperTail(x + step) > 0);
      const slope = (d.cumulative(x + step) - d.cumulative(x - step)) / (2 * step);
      expect(Math.abs(slope / d.density(x) - 1)).toBeLessThan(1e-4);
    },
  );

  test.prop([continuous], { numRuns: 15 })("law: mean and variance are those of the quantiles", (d) => {
    // Midpoints of 1000 equal shares; a lognormal tail of sd 0.6 keeps some parts in a hundred beyond them.
    const people = Array.from({ length: 1000 }, (_, i) => d.quantile((i + 0.5) / 1000));
    const mean = people.reduce((sum, x) => sum + x, 0) / people.length;
    const variance = people.reduce((sum, x) => sum + (x - mean) ** 2, 0) / people.length;
    expect(Math.abs(mean - d.mean) / d.sd).toBeLessThan(5e-3);
    expect(Math.abs(variance / d.variance - 1)).toBeLessThan(6e-2);
  });

  test.prop([continuous, fc.integer()], runs)(
    "law: the same seed draws the same person, of those there are",
    (d, seed) => {
      const person = d.sample(createRandom(seed));
      expect(d.sample(createRandom(seed))).toBe(person);
      expect(d.density(person)).toBeGreaterThan(0);
    },
  );
});

describe("single families", () => {
  test.prop([between(-2000, 2000), between(1, 100), between(-8, 8), between(-4, 4)], runs)(
    "law: a skew-normal of the opposite shape is the mirror image",
    (location, scale, shape, z) => {
      const d = skewNormalDistribution({ location, scale, shape });
      const mirror = skewNormalDistribution({ location: -location, scale, shape: -shape });
      const x = location + z * scale;
      expect(mirror.upperTail(-x)).toBeCloseTo(d.cumulative(x), 13);
      expect(mirror.mean).toBeCloseTo(-d.mean, 9);
      expect(mirror.skewness).toBeCloseTo(-d.skewness, 12);
    },
  );

  test.prop([between(0, 10), between(0.01, 100)], runs)(
    "law: Owen's T of h and a and of ah and 1/a add up to the tails (Owen 1956)",
    (h, a) => {
      const [p, q] = [normalUpperTail(h), normalUpperTail(a * h)];
      const tails = (p + q) / 2 - p * q;
      expect(Math.abs(owensT(h, a) + owensT(a * h, 1 / a) - tails)).toBeLessThanOrEqual(
        1e-13 * tails + 1e-300,
      );
    },
  );

  test.prop([between(-8, 8), between(0, 50), between(0, 50)], runs)(
    "law: Owen's T grows with a and stays below half a tail",
    (h, a, b) => {
      const [small, large] = a < b ? [a, b] : [b, a];
      expect(owensT(h, small)).toBeLessThanOrEqual(owensT(h, large) * (1 + 1e-12));
      expect(owensT(h, large)).toBeLessThanOrEqual((normalUpperTail(Math.abs(h)) / 2) * (1 + 1e-12));
    },
  );

  test.prop([between(-30, 30), between(1e-3, 40)], runs)(
    "law: what is left of a normal distribution between bounds varies less, and lies within them",
    (from, width) => {
      fc.pre(from < 25 && from + width > -25);
      const d = truncatedNormal({ mean: 0, sd: 1, from, to: from + width });
      expect(d.variance).toBeLessThanOrEqual(1);
      expect(d.mean).toBeGreaterThanOrEqual(from);
      expect(d.mean).toBeLessThanOrEqual(from + width);
    },
  );

  test.prop([continuous, between(0.1, 5), between(0.1, 5), share], runs)(
    "law: a mixture of people of one kind is that kind",
    (d, a, b, p) => {
      const mixed = mixtureDistribution([
        { weight: a, distribution: d },
        { weight: b, distribution: d },
      ]);
      expect(mixed.quantile(p)).toBeCloseTo(d.quantile(p), 6);
      expect(mixed.variance / d.variance).toBeCloseTo(1, 9);
    },
  );

  test.prop(
    [
      fc.array(fc.integer({ min: 300, max: 500 }), { minLength: 1, maxLength: 30 }),
      fc.integer({ min: 2, max: 5 }),
    ],
    runs,
  )("law: a weight of k is k people", (values, k) => {
    const weighted = empiricalDistribution(
      values,
      values.map((_, i) => (i === 0 ? k : 1)),
    );
    const people = empiricalDistribution([...values, ...Array.from({ length: k - 1 }, () => values[0] ?? 0)]);
    expect(weighted.mean).toBeCloseTo(people.mean, 9);
    expect(weighted.variance).toBeCloseTo(people.variance, 6);
    for (const x of values) expect(weighted.cumulative(x)).toBeCloseTo(people.cumulative(x), 12);
    expect(weighted.quantile(0.37)).toBe(people.quantile(0.37));
  });

  test.prop([fc.array(between(300, 500), { minLength: 2, maxLength: 40 }), share], runs)(
    "law: the empirical quantile of a share is reached by that share, and by no smaller value",
    (values, p) => {
      const d = empiricalDistribution(values);
      const x = d.quantile(p);
      expect(d.cumulative(x)).toBeGreaterThanOrEqual(p - 1e-12);
      const smaller = values.filter((value) => value < x);
      for (const value of smaller) expect(d.cumulative(value)).toBeLessThan(p);
    },
  );

  test.prop([between(-50, 50), between(0.1, 20), between(-500, 500), between(0.1, 10), between(-5, 5)], runs)(
    "law: another unit and another zero move a distribution along",
    (mean, sd, shift, factor, z) => {
      const d = normalDistribution({ mean, sd });
      const moved = normalDistribution({ mean: shift + factor * mean, sd: factor * sd });
      const x = mean + z * sd;
      expect(moved.cumulative(shift + factor * x)).toBeCloseTo(d.cumulative(x), 9);
      expect(moved.density(shift + factor * x) * factor).toBeCloseTo(d.density(x), 8);
    },
  );
});
