import {
  andersonDarling,
  andersonDarlingCriticalValues,
  type FittedFamily,
  fitDistribution,
  varianceComponents,
} from "@tapewise/population";
import { describe, expect, test } from "vitest";
import fits from "./population-fits.json" with { type: "json" };
import { type Against, against } from "./table/against.ts";

const families: readonly FittedFamily[] = ["normal", "lognormal", "skew-normal", "mixture"];

/** R's optimiser ends within 1e-6 of a standard error or so; its information comes from differences. */
const PARAMETER = 2e-4;
const ERROR = 5e-3;
const fitOf = (why: string): Against =>
  against({
    of: "population.fitDistribution",
    source: "maximum likelihood of 48 invented girths",
    origin: "recomputed with R 4.2.2, optim",
    why,
  });
const likelihood = fitOf("a likelihood is flat at its maximum");
const optimised = fitOf(
  "R's optimiser ends within 1e-6 of a standard error or so; its information comes of differences",
);
const components = (source: string, why: string): Against =>
  against({ of: "population.varianceComponents", source, origin: "recomputed with R 4.2.2", why });

describe(`maximum likelihood of 48 invented girths (${fits.origin})`, () => {
  test.each(families)("%s", (family) => {
    const fit = fitDistribution(family, fits.girths);
    const theirs = fits.fits[family];
    likelihood.absolute(fit.logLikelihood, theirs.logLikelihood, 5e-8);
    expect(fit.parameters).toHaveLength(theirs.parameters.length);
    fit.parameters.forEach(({ value, standardError = 0 }, i) => {
      const error = theirs.standardErrors[i] ?? 0;
      optimised.absolute(value, theirs.parameters[i] ?? Number.NaN, PARAMETER * error);
      optimised.relative(standardError, error, ERROR);
    });
    expect(fit.atBoundary).toBe(false);
    const count = theirs.parameters.length;
    expect(fit.aic).toBeCloseTo(2 * count - 2 * theirs.logLikelihood, 6);
    expect(fit.bic).toBeCloseTo(count * Math.log(48) - 2 * theirs.logLikelihood, 6);
  });

  test.each(families)("%s, weighted", (family) => {
    const fit = fitDistribution(family, fits.girths, fits.weights);
    const theirs = fits.weighted[family];
    likelihood.absolute(fit.logLikelihood, theirs.logLikelihood, 5e-8);
    fit.parameters.forEach(({ value }, i) => {
      const error = theirs.standardErrors[i] ?? 0;
      optimised.absolute(value, theirs.parameters[i] ?? Number.NaN, PARAMETER * error);
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
    against({
      of: "population.andersonDarling",
      source: "Anderson & Darling's A² of a fit",
      origin: "recomputed with R 4.2.2",
      why: "logarithms of tails of a fit",
    }).absolute(statistic, fits.andersonDarling[family], 5e-11);
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
    const aov = components("mean squares of R's aov", "tens of roundings");
    aov.relative(parts.withinSd, Math.sqrt(meanSquareWithin), 1e-11);
    aov.relative(parts.betweenSd, Math.sqrt((meanSquareBetween - meanSquareWithin) / 3), 1e-11);
  });

  test("unbalanced: R's nlme by maximum likelihood", () => {
    const theirs = fits.unbalanced;
    const parts = varianceComponents(theirs.people);
    expect(parts.method).toBe("maximum-likelihood");
    // nlme stops a little short of the maximum: within 1e-5 of a standard error.
    const nlme = components("R's nlme by maximum likelihood", "nlme stops a little short of the maximum");
    nlme.absolute(parts.mean, theirs.mean, 5e-5);
    nlme.absolute(parts.betweenSd, theirs.betweenSd, 5e-4);
    nlme.absolute(parts.withinSd, theirs.withinSd, 5e-5);
  });
});
