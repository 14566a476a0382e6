import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { empiricalDistribution, mixtureDistribution, normalDistribution } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const women = normalDistribution({ mean: 400, sd: 20 });
const men = normalDistribution({ mean: 460, sd: 30 });
const everybody = mixtureDistribution([
  { weight: 3, distribution: women },
  { weight: 1, distribution: men },
]);

describe("mixtureDistribution", () => {
  test("weighs densities and shares", () => {
    expect(everybody.density(430)).toBeCloseTo(0.75 * women.density(430) + 0.25 * men.density(430), 16);
    expect(everybody.cumulative(430)).toBeCloseTo(
      0.75 * women.cumulative(430) + 0.25 * men.cumulative(430),
      15,
    );
    const range = interval(390, 450);
    expect(everybody.probability(range)).toBeCloseTo(
      0.75 * women.probability(range) + 0.25 * men.probability(range),
      15,
    );
    expect(everybody.parameters).toEqual({ share1: 0.75, share2: 0.25 });
  });

  test("has the moments of the whole", () => {
    // Mean 400 + 60/4; variance 0.75·(400 + 15²) + 0.25·(900 + 45²).
    expect(everybody.mean).toBe(415);
    expect(everybody.variance).toBeCloseTo(0.75 * 625 + 0.25 * 2925, 10);
    // Third: 0.75·(3·(−15)·400 − 15³) + 0.25·(3·45·900 + 45³).
    const third = 0.75 * (-18000 - 3375) + 0.25 * (121500 + 91125);
    expect(everybody.skewness).toBeCloseTo(third / 1200 ** 1.5, 12);
  });

  test("has quantiles between those of its parts", () => {
    for (const p of [1e-9, 0.1, 0.5, 0.9, 1 - 1e-9]) {
      const x = everybody.quantile(p);
      expect(x).toBeGreaterThan(women.quantile(p));
      expect(x).toBeLessThan(men.quantile(p));
      expect(everybody.cumulative(x)).toBeCloseTo(p, 12);
    }
    expect(everybody.quantile(0)).toBe(Number.NEGATIVE_INFINITY);
    expect(everybody.quantile(1)).toBe(Number.POSITIVE_INFINITY);
  });

  test("finds the place of a jump", () => {
    const spiked = mixtureDistribution([
      { weight: 1, distribution: empiricalDistribution([410]) },
      { weight: 1, distribution: women },
    ]);
    // Φ(0.5)/2 = 0.346 lies below the jump at 410 and 0.846 at it.
    expect(spiked.quantile(0.6)).toBeCloseTo(410, 9);
    expect(spiked.cumulative(spiked.quantile(0.6))).toBeGreaterThanOrEqual(0.6);
  });

  test("leaves out what counts nothing", () => {
    const only = mixtureDistribution([
      { weight: 0, distribution: men },
      { weight: 2, distribution: women },
    ]);
    expect(only.quantile(0.3)).toBe(women.quantile(0.3));
    expect(only.parameters).toEqual({ share1: 1 });
    expect(only.sample(createRandom(2))).not.toBe(men.sample(createRandom(2)));
  });

  test("draws each kind as often as it is", () => {
    const spots = mixtureDistribution([
      { weight: 3, distribution: empiricalDistribution([1]) },
      { weight: 1, distribution: empiricalDistribution([2]) },
    ]);
    const random = createRandom(5);
    const ones = Array.from({ length: 4000 }, () => spots.sample(random)).filter((x) => x === 1).length;
    // Four standard errors of a share of 3/4.
    expect(Math.abs(ones / 4000 - 0.75)).toBeLessThan(4 * Math.sqrt(0.1875 / 4000));
  });

  test("refuses no parts and weights that are none", () => {
    expect(() => mixtureDistribution([])).toThrow(InvalidArgumentError);
    expect(() => mixtureDistribution([{ weight: -1, distribution: men }])).toThrow(InvalidArgumentError);
    expect(() => mixtureDistribution([{ weight: 0, distribution: men }])).toThrow(InvalidArgumentError);
    expect(() => mixtureDistribution([{ weight: Number.NaN, distribution: men }])).toThrow(
      InvalidArgumentError,
    );
    expect(() => everybody.quantile(2)).toThrow(InvalidArgumentError);
  });
});
