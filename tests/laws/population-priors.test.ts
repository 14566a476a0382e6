import { fc, test } from "@fast-check/vitest";
import { menReference, referencePrior, womenReference } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { expect } from "vitest";

const cut = fc.constantFrom("women" as const, "men" as const);
const stature = fc.double({ min: 900, max: 2300, noNaN: true }).map(millimetres);
const weights = fc.tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })));

const populationOf = (name: "women" | "men") => (name === "women" ? womenReference : menReference);

/** The variance of a weighted sum of the dimensions. */
function varianceOf(covariance: readonly (readonly number[])[], by: readonly number[]): number {
  let sum = 0;
  covariance.forEach((row, i) => {
    row.forEach((value, j) => {
      sum += (by[i] ?? 0) * (by[j] ?? 0) * value;
    });
  });
  return sum;
}

test.prop([cut, stature])("law: to know the stature never widens a dimension", (name, statureMm) => {
  const [whole, known] = [referencePrior({ cut: name }), referencePrior({ cut: name, statureMm })];
  known.covarianceMm2.forEach((row, i) => {
    expect(row[i]).toBeLessThanOrEqual(whole.covarianceMm2[i]?.[i] ?? 0);
  });
});

test.prop([cut, stature, weights])(
  "law: to know the stature never widens any sum of dimensions either",
  (name, statureMm, by) => {
    const [whole, known] = [referencePrior({ cut: name }), referencePrior({ cut: name, statureMm })];
    expect(varianceOf(known.covarianceMm2, by)).toBeLessThanOrEqual(
      varianceOf(whole.covarianceMm2, by) * (1 + 1e-12),
    );
  },
);

test.prop([cut, fc.option(stature, { nil: undefined }), weights])(
  "law: a prior's covariances are symmetric to the last bit and positive definite",
  (name, statureMm, by) => {
    const prior = referencePrior({ cut: name, ...(statureMm === undefined ? {} : { statureMm }) });
    prior.covarianceMm2.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(value).toBe(prior.covarianceMm2[j]?.[i]);
      });
    });
    fc.pre(by.some((weight) => Math.abs(weight) > 1e-3));
    expect(varianceOf(prior.covarianceMm2, by)).toBeGreaterThan(0);
  },
);

test.prop([cut, stature, stature])(
  "law: the spread does not depend on which stature is known",
  (name, a, b) => {
    expect(referencePrior({ cut: name, statureMm: a }).covarianceMm2).toEqual(
      referencePrior({ cut: name, statureMm: b }).covarianceMm2,
    );
  },
);

test.prop([cut, stature, stature])(
  "law: a taller person has the longer back and the broader shoulders, halfway between two halfway",
  (name, a, b) => {
    const [shorter, taller] = [millimetres(Math.min(a, b)), millimetres(Math.max(a, b))];
    const [low, high] = [shorter, taller].map((statureMm) => referencePrior({ cut: name, statureMm }).meanMm);
    const middle = referencePrior({ cut: name, statureMm: millimetres((a + b) / 2) }).meanMm;
    middle.forEach((mean, i) => {
      const [from, to] = [low?.[i] ?? 0, high?.[i] ?? 0];
      expect(from).toBeLessThanOrEqual(to);
      expect(mean).toBeCloseTo((from + to) / 2, 9);
    });
  },
);

test.prop([cut])(
  "law: averaged over the statures of the cut, the conditional priors make up the whole",
  (name) => {
    const population = populationOf(name);
    const [mean = 0, sd = 0] = [population.meanMm[0], population.sdMm[0]];
    // Two statures, one standard deviation to both sides, have the mean and the variance of all statures.
    const [low, high] = [mean - sd, mean + sd].map((mm) =>
      referencePrior({ cut: name, statureMm: millimetres(mm) }),
    );
    const whole = referencePrior({ cut: name });
    whole.covarianceMm2.forEach((row, i) => {
      expect(((low?.meanMm[i] ?? 0) + (high?.meanMm[i] ?? 0)) / 2).toBeCloseTo(whole.meanMm[i] ?? 0, 9);
      row.forEach((value, j) => {
        // Law of total covariance: E[cov] + cov[E].
        const within = low?.covarianceMm2[i]?.[j] ?? 0;
        const half = (k: number) => ((high?.meanMm[k] ?? 0) - (low?.meanMm[k] ?? 0)) / 2;
        expect(within + half(i) * half(j)).toBeCloseTo(value, 9);
      });
    });
  },
);
