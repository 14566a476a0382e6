import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { hessian, maximise } from "../fitting/maximise.ts";
import type { VarianceComponents } from "./components.ts";

/** What a person's readings come to. */
interface Person {
  readonly count: number;
  readonly mean: number;
  readonly squares: number;
}

/** From this ratio to the spread within on the spread between people counts as none. */
const NOTHING = 1e-4;

/** Variance components by maximum likelihood, for people who were read unequally often. */
export function likelihoodComponents(people: readonly (readonly number[])[]): VarianceComponents {
  const persons = people.map((readings): Person => {
    const count = readings.length;
    const mean = readings.reduce((sum, reading) => sum + reading, 0) / count;
    return { count, mean, squares: readings.reduce((sum, reading) => sum + (reading - mean) ** 2, 0) };
  });
  const readings = persons.reduce((sum, { count }) => sum + count, 0);
  const centre = persons.reduce((sum, { mean }) => sum + mean, 0) / persons.length;
  const freedom = readings - persons.length;
  const withinStart = persons.reduce((sum, { squares }) => sum + squares, 0) / freedom;
  const betweenStart = persons.reduce((sum, { mean }) => sum + (mean - centre) ** 2, 0) / persons.length;
  if (withinStart === 0) return withoutError(persons, centre, betweenStart, readings);

  const logLikelihood = (mean: number, betweenVariance: number, withinVariance: number): number => {
    if (!(withinVariance > 0)) return Number.NEGATIVE_INFINITY;
    return persons.reduce((sum, person) => {
      const own = withinVariance + person.count * betweenVariance;
      if (!(own > 0)) return Number.NEGATIVE_INFINITY;
      const apart = (person.count * (person.mean - mean) ** 2) / own;
      const logs = (person.count - 1) * Math.log(withinVariance) + Math.log(own);
      return (
        sum - (logs + person.squares / withinVariance + apart + person.count * Math.log(2 * Math.PI)) / 2
      );
    }, 0);
  };
  // σb as a multiple of σw: the likelihood is even in it, so that a spread of 0 is an ordinary point.
  const { at } = maximise(
    ([mean = 0, logWithin = 0, ratio = 0]) => {
      const variance = Math.exp(2 * logWithin);
      return logLikelihood(mean, ratio ** 2 * variance, variance) / readings;
    },
    [centre, Math.log(withinStart) / 2, Math.max(Math.sqrt(betweenStart / withinStart), 0.3)],
    [Math.sqrt(betweenStart + withinStart), 1, Math.max(Math.sqrt(betweenStart / withinStart), 0.3)],
  );
  const [mean = centre, logWithin = 0, ratio = 0] = at;
  const withinSd = Math.exp(logWithin);
  const betweenSd = Math.abs(ratio) < NOTHING ? 0 : Math.abs(ratio) * withinSd;
  const errors = standardErrors(logLikelihood, mean, betweenSd, withinSd);
  return {
    method: "maximum-likelihood",
    people: persons.length,
    readings,
    mean,
    meanError: errors.mean,
    betweenSd,
    ...(errors.between === undefined ? {} : { betweenError: errors.between }),
    withinSd,
    withinError: errors.within,
    reliability: betweenSd ** 2 / (betweenSd ** 2 + withinSd ** 2),
  };
}

/** Readings that never differ within a person: the people's values are known, and the likelihood has no end. */
function withoutError(
  persons: readonly Person[],
  mean: number,
  variance: number,
  readings: number,
): VarianceComponents {
  const people = persons.length;
  const betweenSd = Math.sqrt(variance);
  return {
    method: "maximum-likelihood",
    people,
    readings,
    mean,
    meanError: betweenSd / Math.sqrt(people),
    betweenSd,
    betweenError: betweenSd / Math.sqrt(2 * people),
    withinSd: 0,
    withinError: 0,
    reliability: 1,
  };
}

/** From the observed information of mean, σb and σw; of mean and σw alone where σb is 0. */
function standardErrors(
  logLikelihood: (mean: number, betweenVariance: number, withinVariance: number) => number,
  mean: number,
  betweenSd: number,
  withinSd: number,
): { readonly mean: number; readonly between?: number; readonly within: number } {
  const whole = Math.hypot(betweenSd, withinSd);
  const free = betweenSd > 0 ? [mean, withinSd, betweenSd] : [mean, withinSd];
  const steps = [whole, withinSd, betweenSd].slice(0, free.length).map((scale) => scale * 2e-4);
  const information = hessian(([m = 0, w = 0, b = 0]) => logLikelihood(m, b * b, w * w), free, steps).map(
    (row) => row.map((value) => -value),
  );
  const decomposition = new CholeskyDecomposition(information);
  if (!decomposition.isPositiveDefinite()) return { mean: 0, within: 0 };
  const inverse = decomposition.solve(Matrix.eye(free.length));
  const error = (i: number): number => Math.sqrt(inverse.get(i, i));
  return { mean: error(0), within: error(1), ...(betweenSd > 0 ? { between: error(2) } : {}) };
}
