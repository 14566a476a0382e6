import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalDistribution, truncatedNormal } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("truncatedNormal", () => {
  test("without bounds is the whole", () => {
    const all = truncatedNormal({ mean: 1628, sd: 64 });
    const whole = normalDistribution({ mean: 1628, sd: 64 });
    expect([all.mean, all.sd, all.skewness, all.parameters.share]).toEqual([1628, 64, 0, 1]);
    expect(all.quantile(0.9)).toBeCloseTo(whole.quantile(0.9), 9);
    expect(all.density(1700)).toBeCloseTo(whole.density(1700), 15);
  });

  test("cut in half has mean √(2/π) and variance 1 − 2/π", () => {
    const half = truncatedNormal({ mean: 0, sd: 1, from: 0 });
    expect(half.mean).toBeCloseTo(Math.sqrt(2 / Math.PI), 15);
    expect(half.variance).toBeCloseTo(1 - 2 / Math.PI, 15);
    expect(half.parameters.share).toBe(0.5);
    expect(half.cumulative(0)).toBe(0);
    expect(half.density(-1)).toBe(0);
    expect(half.density(0)).toBeCloseTo(2 * 0.3989422804014327, 15);
  });

  test("over a narrow range is flat: middle, width²/12", () => {
    const narrow = truncatedNormal({ mean: 0, sd: 1, from: 0, to: 1e-4 });
    expect(narrow.mean).toBeCloseTo(5e-5, 12);
    expect(narrow.variance / (1e-8 / 12)).toBeCloseTo(1, 6);
  });

  test("far out is exponential: 1/a beyond its bound", () => {
    const far = truncatedNormal({ mean: 0, sd: 1, from: 30 });
    // 1/a − 2/a³ + 10/a⁵ is the asymptotic series of the excess.
    expect(far.mean - 30).toBeCloseTo(1 / 30 - 2 / 30 ** 3 + 10 / 30 ** 5, 7);
    expect(far.cumulative(far.quantile(0.3))).toBeCloseTo(0.3, 12);
  });

  test("gives shares of the part that is left", () => {
    const middle = truncatedNormal({ mean: 400, sd: 20, from: 380, to: 420 });
    expect(middle.cumulative(420)).toBe(1);
    expect(middle.upperTail(380)).toBe(1);
    expect(middle.upperTail(500)).toBe(0);
    expect(middle.cumulative(400)).toBeCloseTo(0.5, 15);
    expect(middle.probability(interval(300, 400))).toBeCloseTo(0.5, 15);
    expect([middle.quantile(0), middle.quantile(1)]).toEqual([380, 420]);
    const random = createRandom(3);
    for (let i = 0; i < 50; i += 1) {
      const drawn = middle.sample(random);
      expect(drawn >= 380 && drawn <= 420).toBe(true);
    }
  });

  test("is the same seen from the other side", () => {
    const right = truncatedNormal({ mean: 0, sd: 1, from: 2, to: 5 });
    const left = truncatedNormal({ mean: 0, sd: 1, from: -5, to: -2 });
    expect(left.mean).toBe(-right.mean);
    expect(left.sd).toBe(right.sd);
    expect(left.skewness).toBe(-right.skewness);
  });

  test.each([
    [{ mean: 0, sd: 1, from: 2, to: 1 }],
    [{ mean: 0, sd: 1, from: 1, to: 1 }],
    [{ mean: 0, sd: 1, from: 50 }],
    [{ mean: 0, sd: 0 }],
    [{ mean: Number.NaN, sd: 1 }],
    [{ mean: 0, sd: 1, from: Number.NaN }],
  ])("refuses %o", (parameters) => {
    expect(() => truncatedNormal(parameters)).toThrow(InvalidArgumentError);
  });
});
