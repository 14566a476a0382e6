import { InvalidArgumentError } from "@tapewise/outcome";
import {
  type FittedFamily,
  fitDistribution,
  mixtureDistribution,
  normalDistribution,
  skewNormalDistribution,
} from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const torsos = [398, 402, 407, 411, 412, 421, 426];

describe("fitDistribution", () => {
  test("of a normal distribution is mean and deviation on n", () => {
    // Sum 2877; squared deviations 169 + 81 + 16 + 0 + 1 + 100 + 225 = 592.
    const fit = fitDistribution("normal", torsos);
    const sd = Math.sqrt(592 / 7);
    expect(fit.distribution.mean).toBeCloseTo(411, 8);
    expect(fit.distribution.sd).toBeCloseTo(sd, 8);
    const logLikelihood = -(7 / 2) * (Math.log((2 * Math.PI * 592) / 7) + 1);
    expect(fit.logLikelihood).toBeCloseTo(logLikelihood, 10);
    expect(fit.aic).toBeCloseTo(4 - 2 * logLikelihood, 9);
    expect(fit.bic).toBeCloseTo(2 * Math.log(7) - 2 * logLikelihood, 9);
    expect(fit.parameters.map(({ name }) => name)).toEqual(["mean", "sd"]);
    // The quantile's error by the delta method: √(s²/n + z² s²/2n).
    const z = 1.6448536269514722;
    expect(fit.standardErrorOf((torso) => torso.quantile(0.95))).toBeCloseTo(
      sd * Math.sqrt((1 + z ** 2 / 2) / 7),
      5,
    );
    expect([fit.people, fit.effectivePeople, fit.atBoundary]).toEqual([7, 7, false]);
  });

  test("of a lognormal distribution is the normal fit of logarithms", () => {
    const fit = fitDistribution("lognormal", torsos);
    const logs = fitDistribution("normal", torsos.map(Math.log));
    expect(fit.distribution.parameters.meanLog).toBeCloseTo(logs.distribution.mean, 9);
    expect(fit.distribution.parameters.sdLog).toBeCloseTo(logs.distribution.sd, 9);
    // Per mm instead of per unit of the logarithm.
    const jacobian = torsos.reduce((sum, torso) => sum + Math.log(torso), 0);
    expect(fit.logLikelihood).toBeCloseTo(logs.logLikelihood - jacobian, 8);
  });

  test("finds a skew-normal again, within its standard errors", () => {
    const truth = skewNormalDistribution({ location: 760, scale: 140, shape: 3 });
    const random = createRandom(31);
    const fit = fitDistribution(
      "skew-normal",
      Array.from({ length: 1500 }, () => truth.sample(random)),
    );
    const expected = [760, 140, 3];
    fit.parameters.forEach(({ value, standardError = 0 }, i) => {
      expect(standardError).toBeGreaterThan(0);
      expect(Math.abs(value - (expected[i] ?? 0))).toBeLessThan(4 * standardError);
    });
    expect(Math.abs(fit.distribution.mean - truth.mean)).toBeLessThan(
      4 * (fit.standardErrorOf((girth) => girth.mean) ?? 0),
    );
  });

  test("finds women and men in a mixture again", () => {
    const truth = mixtureDistribution([
      { weight: 0.4, distribution: normalDistribution({ mean: 1620, sd: 60 }) },
      { weight: 0.6, distribution: normalDistribution({ mean: 1800, sd: 65 }) },
    ]);
    const random = createRandom(32);
    const fit = fitDistribution(
      "mixture",
      Array.from({ length: 1500 }, () => truth.sample(random)),
    );
    const expected = [0.4, 1620, 60, 1800, 65];
    fit.parameters.forEach(({ value, standardError = 0 }, i) => {
      expect(Math.abs(value - (expected[i] ?? 0))).toBeLessThan(4 * standardError);
    });
  });

  test("says when a sample is more skew than the family", () => {
    const exponential = Array.from({ length: 200 }, (_, i) => -100 * Math.log(1 - (i + 0.5) / 200));
    const fit = fitDistribution("skew-normal", exponential);
    expect(fit.atBoundary).toBe(true);
    expect(fit.parameters.every(({ standardError }) => standardError === undefined)).toBe(true);
    expect(fit.standardErrorOf((girth) => girth.mean)).toBeUndefined();
  });

  test("says when a part of a mixture shrinks to one value", () => {
    const heaped = [
      ...Array.from({ length: 30 }, () => 420),
      ...Array.from({ length: 60 }, (_, i) => 380 + i),
    ];
    expect(fitDistribution("mixture", heaped).atBoundary).toBe(true);
  });

  test("weighs people: a weight of two counts as the person twice, but knows no more", () => {
    const weights = [2, 1, 1, 1, 1, 1, 2];
    const weighted = fitDistribution("normal", torsos, weights);
    const twice = fitDistribution("normal", [...torsos, 398, 426]);
    expect(weighted.distribution.mean).toBeCloseTo(twice.distribution.mean, 7);
    expect(weighted.distribution.sd).toBeCloseTo(twice.distribution.sd, 7);
    // 9² / (4 + 5 + 4)
    expect(weighted.effectivePeople).toBeCloseTo(81 / 13, 12);
    // The sandwich of a mean: √Σw²(x − m)² / Σw.
    const mean = twice.distribution.mean;
    const squares = torsos.reduce((sum, torso, i) => sum + ((weights[i] ?? 0) * (torso - mean)) ** 2, 0);
    expect(weighted.parameters[0]?.standardError).toBeCloseTo(Math.sqrt(squares) / 9, 5);
  });

  test("does not mind the scale of weights", () => {
    const once = fitDistribution("skew-normal", torsos, [1, 2, 1, 1, 2, 1, 1]);
    const thousand = fitDistribution("skew-normal", torsos, [1000, 2000, 1000, 1000, 2000, 1000, 1000]);
    expect(thousand.logLikelihood).toBeCloseTo(once.logLikelihood, 9);
  });

  test.each<[string, FittedFamily, number[]]>([
    ["too few people", "normal", [1, 2, 3]],
    ["too few for five parameters", "mixture", [1, 2, 3, 4, 5, 6]],
    ["people who are all alike", "normal", [400, 400, 400, 400]],
    ["what is no number", "normal", [400, 410, Number.NaN, 420]],
    ["a logarithm of nothing", "lognormal", [400, 410, 0, 420]],
  ])("refuses %s", (_, family, values) => {
    expect(() => fitDistribution(family, values)).toThrow(InvalidArgumentError);
  });

  test("refuses weights that are none and families that it does not know", () => {
    expect(() => fitDistribution("normal", torsos, [1, 2])).toThrow(InvalidArgumentError);
    // @ts-expect-error: no family that can be fitted
    expect(() => fitDistribution("gamma", torsos)).toThrow(InvalidArgumentError);
  });
});
