import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { lognormalDistribution } from "@tapewise/population";
import { createRandom, normalCdf } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const girth = lognormalDistribution({ meanLog: Math.log(900), sdLog: 0.1 });

describe("lognormalDistribution", () => {
  test("is normal in logarithms", () => {
    expect(girth.quantile(0.5)).toBeCloseTo(900, 9);
    expect(girth.cumulative(900 * Math.exp(0.1))).toBeCloseTo(normalCdf(1), 14);
    expect(girth.upperTail(900 * Math.exp(0.1))).toBeCloseTo(normalCdf(-1), 14);
    expect(girth.probability(interval(900 * Math.exp(-0.1), 900))).toBeCloseTo(normalCdf(1) - 0.5, 14);
    // φ(0) / (0.1 · 900)
    expect(girth.density(900)).toBeCloseTo(0.3989422804014327 / 90, 15);
  });

  test("has the moments of the textbook", () => {
    const growth = Math.exp(0.01) - 1;
    expect(girth.mean).toBeCloseTo(900 * Math.exp(0.005), 9);
    expect(girth.sd).toBeCloseTo(900 * Math.exp(0.005) * Math.sqrt(growth), 9);
    expect(girth.skewness).toBeCloseTo((Math.exp(0.01) + 2) * Math.sqrt(growth), 12);
  });

  test("begins at its shift", () => {
    const shifted = lognormalDistribution({ meanLog: 4, sdLog: 0.5, shift: 600 });
    const plain = lognormalDistribution({ meanLog: 4, sdLog: 0.5 });
    expect(shifted.mean).toBeCloseTo(600 + plain.mean, 10);
    expect(shifted.sd).toBe(plain.sd);
    expect(shifted.cumulative(600)).toBe(0);
    expect(shifted.density(599)).toBe(0);
    expect(plain.density(Number.MIN_VALUE)).toBe(0);
    expect(plain.density(Number.POSITIVE_INFINITY)).toBe(0);
    expect(shifted.upperTail(500)).toBe(1);
    expect(shifted.quantile(0)).toBe(600);
    expect(shifted.quantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(shifted.cumulative(655)).toBeCloseTo(plain.cumulative(55), 14);
    expect(shifted.sample(createRandom(1))).toBeGreaterThan(600);
  });

  test.each([
    [{ meanLog: Number.NaN, sdLog: 1 }],
    [{ meanLog: 0, sdLog: 0 }],
    [{ meanLog: 0, sdLog: 40 }],
    [{ meanLog: 0, sdLog: 1, shift: Number.POSITIVE_INFINITY }],
  ])("refuses %o", (parameters) => {
    expect(() => lognormalDistribution(parameters)).toThrow(InvalidArgumentError);
  });

  test("refuses NaN", () => {
    expect(() => girth.cumulative(Number.NaN)).toThrow(InvalidArgumentError);
  });
});
