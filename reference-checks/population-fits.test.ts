import {
  andersonDarling,
  andersonDarlingCriticalValues,
  type FittedFamily,
  fitDistribution,
  varianceComponents,
} from "@tapewise/population";
import { describe, expect, test } from "vitest";
import fits from "./population-fits.json" with { type: "json" };

const families: readonly FittedFamily[] = ["normal", "lognormal", "skew-normal", "mixture"];

/** R's optimiser ends within 1e-6 of a standard error or so; its information comes from differences. */
const PARAMETER = 2e-4;
const ERROR = 5e-3;

describe(`maximum likelihood of 48 invented girths (${fits.origin})`, () => {
  test.each(families)("%s", (family) => {
    const fit = fitDistribution(family, fits.girths);
    const theirs = fits.fits[family];
    expect(fit.logLikelihood).toBeCloseTo(theirs.logLikelihood, 7);
    expect(fit.parameters).toHaveLength(theirs.parameters.length);
    fit.parameters.forEach(({ value, standardError = 0 }, i) => {
      const error = theirs.standardErrors[i] ?? 0;
      expect(Math.abs(value - (theirs.parameters[i] ?? 0))).toBeLessThanOrEqual(PARAMETER * error);
      expect(Math.abs(standardError / error - 1)).toBeLessThanOrEqual(ERROR);
    });
    expect(fit.atBoundary).toBe(false);
    const count = theirs.parameters.length;
    expect(fit.aic).toBeCloseTo(2 * count - 2 * theirs.logLikelihood, 6);
    expect(fit.bic).toBeCloseTo(count * Math.log(48) - 2 * theirs.logLikelihood, 6);
  });

  test.each(families)("%s, weighted", (family) => {
    const fit = fitDistribution(family, fits.girths, fits.weights);
    const theirs = fits.weighted[family];
    expect(fit.logLikelihood).toBeCloseTo(theirs.logLikelihood, 7);
    fit.parameters.forEach(({ value }, i) => {
      const error = theirs.standardErrors[i] ?? 0;
      expect(Math.abs(value - (theirs.parameters[i] ?? 0))).toBeLessThanOrEqual(PARAMETER * error);
    });
  });

  test("standard errors of a normal fit are s/√n and s/√2n, by the observed information", () => {
    const { parameters, distribution } = fitDistribution("normal", fits.girths);
    const [mean, sd] = parameters;
    // Differences of a log-likelihood of some hundreds keep about six digits.
    expect((mean?.standardError ?? 0) / (distribution.sd / Math.sqrt(48))).toBeCloseTo(1, 6);
    expect((sd?.standardError ?? 0) / (distribution.sd / Math.sqrt(96))).toBeCloseTo(1, 6);
  });
});

describe("Anderson and Darling's test", () => {
  test.each(["normal", "lognormal"] as const)("A² of a %s fit (R)", (family) => {
    const { statistic } = andersonDarling(fits.girths, fitDistribution(family, fits.girths));
    expect(statistic).toBeCloseTo(fits.andersonDarling[family], 10);
  });

  // M. A. Stephens in D'Agostino & Stephens (1986), table 4.7, printed (from memory). The p-value's formula
  // (table 4.9) is a fit to the same simulations, good to about a twentieth of the level.
  test.each(andersonDarlingCriticalValues)("adjusted A² of $value has p about $level", ({ level, value }) => {
    const printed = new Map([
      [0.1, 0.631],
      [0.05, 0.752],
      [0.025, 0.873],
      [0.01, 1.035],
    ]);
    expect(value).toBe(printed.get(level));
    expect(pValueAt(value) / level).toBeGreaterThan(0.95);
    expect(pValueAt(value) / level).toBeLessThan(1.05);
  });

  /** The p-value at an adjusted A², found by bending a sample until it has it. */
  function pValueAt(adjusted: number): number {
    let [low, high] = [0, 1];
    for (let step = 0; step < 60; step += 1) {
      const middle = (low + high) / 2;
      const sample = Array.from({ length: 40 }, (_, i) => {
        const z = (i - 19.5) / 12;
        return 400 + 20 * z + 20 * middle * z * z;
      });
      const test = andersonDarling(sample, fitDistribution("normal", sample));
      if (Math.abs(test.adjusted - adjusted) < 1e-9) return test.pValue;
      if (test.adjusted < adjusted) low = middle;
      else high = middle;
      if (step === 59) return test.pValue;
    }
    return Number.NaN;
  }
});

describe("variance components", () => {
  test("balanced: from the mean squares of R's aov", () => {
    const { people, meanSquareBetween, meanSquareWithin } = fits.balanced;
    const parts = varianceComponents(people);
    expect(parts.method).toBe("anova");
    expect(parts.withinSd).toBeCloseTo(Math.sqrt(meanSquareWithin), 10);
    expect(parts.betweenSd).toBeCloseTo(Math.sqrt((meanSquareBetween - meanSquareWithin) / 3), 10);
  });

  test("unbalanced: R's nlme by maximum likelihood", () => {
    const theirs = fits.unbalanced;
    const parts = varianceComponents(theirs.people);
    expect(parts.method).toBe("maximum-likelihood");
    // nlme stops a little short of the maximum: within 1e-5 of a standard error.
    expect(parts.mean).toBeCloseTo(theirs.mean, 4);
    expect(parts.betweenSd).toBeCloseTo(theirs.betweenSd, 3);
    expect(parts.withinSd).toBeCloseTo(theirs.withinSd, 4);
  });
});
