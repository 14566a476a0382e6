import { InvalidArgumentError } from "@tapewise/outcome";
import { requireSample, requireWeights } from "../require-argument.ts";
import type { Distribution } from "../univariate/distribution.ts";
import { weightedMoments } from "../univariate/weighted-moments.ts";
import type { FamilyModel, FitSample, FittedFamily } from "./family-model.ts";
import { gradient, maximise } from "./maximise.ts";
import { mixtureModel } from "./mixture-model.ts";
import { lognormalModel, normalModel } from "./normal-models.ts";
import { parameterCovariance } from "./parameter-covariance.ts";
import { skewNormalModel } from "./skew-normal-model.ts";

/** A parameter with its uncertainty. */
export interface FittedParameter {
  readonly name: string;
  readonly value: number;
  /** Absent where the likelihood gives none: at the end of what the family can do. */
  readonly standardError?: number;
}

/** A family fitted to a sample by maximum likelihood. */
export interface Fit {
  readonly family: FittedFamily;
  readonly distribution: Distribution;
  readonly parameters: readonly FittedParameter[];
  readonly logLikelihood: number;
  /** How many values were fitted. */
  readonly people: number;
  /** Kish's effective number, (Σw)² / Σw²: the same without weights. */
  readonly effectivePeople: number;
  /** Akaike's criterion, 2k − 2 ln L: less is better. */
  readonly aic: number;
  /** Schwarz's criterion, k ln n − 2 ln L: less is better, and further parameters cost more. */
  readonly bic: number;
  /**
   * Whether the fit lies at the end of what the family can do (a skewness beyond the skew-normal's, a part of a
   * mixture that shrinks to nothing). Its standard errors then do not exist.
   */
  readonly atBoundary: boolean;
  /** The standard error of anything that follows from the distribution, by the delta method. */
  standardErrorOf(quantity: (distribution: Distribution) => number): number | undefined;
}

const MODELS: Readonly<Record<FittedFamily, FamilyModel>> = {
  normal: normalModel,
  lognormal: lognormalModel,
  "skew-normal": skewNormalModel,
  mixture: mixtureModel,
};

/**
 * Fits a family to a sample by maximum likelihood: `normal`, `lognormal`, `skew-normal`, or `mixture`, which is
 * of two normal distributions (unknown sex).
 *
 * Standard errors come from the observed information. With weights, the likelihood is weighted (the weights add
 * up to the effective number of people) and the standard errors are of the sandwich form. The standard
 * deviation of a normal fit divides by n, as maximum likelihood does.
 *
 * @throws {@link InvalidArgumentError} when there are not at least two more values than parameters, all are
 * equal, one is not finite (or, for lognormal, not above 0), or the weights are not one number from 0 up each.
 *
 * @example
 * ```ts
 * import { fitDistribution } from "@tapewise/population";
 * const fit = fitDistribution("normal", [398, 402, 407, 411, 412, 421, 426]);
 * fit.distribution.mean.toFixed(6); // => "411.000000"
 * fit.parameters[0]?.standardError?.toFixed(3); // => "3.476"
 * fit.standardErrorOf((torso) => torso.quantile(0.95))?.toFixed(2); // => "5.33"
 * ```
 */
export function fitDistribution(
  family: FittedFamily,
  values: readonly number[],
  weights?: readonly number[],
): Fit {
  const model = Object.hasOwn(MODELS, family) ? MODELS[family] : undefined;
  if (model === undefined) throw new InvalidArgumentError("family", family, Object.keys(MODELS).join(", "));
  const count = model.names.length;
  const sample = prepare(values, weights, count + 2);
  if (family === "lognormal") requireAboveZero(values);

  const total = sample.weights.reduce((sum, weight) => sum + weight, 0);
  const logLikelihood = (natural: readonly number[]): number => {
    const logDensity = model.logDensity(natural);
    let sum = 0;
    for (const [index, value] of sample.values.entries())
      sum += (sample.weights[index] ?? 0) * logDensity(value);
    return Number.isNaN(sum) ? Number.NEGATIVE_INFINITY : sum;
  };
  const best = model
    .starts(sample)
    .map((start) =>
      maximise((free) => logLikelihood(model.natural(free, sample)) / total, start, model.freeScales(sample)),
    )
    .reduce((most, each) => (each.value > most.value ? each : most));
  const found = model.natural(best.at, sample);
  const natural = model.inOrder?.(found) ?? found;
  const atBoundary = model.isAtBoundary(natural, sample);
  const scales = model.scales(natural, sample);
  const covariance = atBoundary
    ? undefined
    : parameterCovariance({ model, natural, scales, sample, logLikelihood, robust: weights !== undefined });
  const value = logLikelihood(natural);

  const standardErrorOf = (quantity: (distribution: Distribution) => number): number | undefined => {
    if (covariance === undefined) return undefined;
    const steps = scales.map((scale) => scale * 1e-5);
    const slopes = gradient((point) => quantity(model.distribution(point)), natural, steps);
    const variance = slopes.reduce(
      (sum, a, i) => sum + slopes.reduce((row, b, j) => row + a * b * (covariance[i]?.[j] ?? 0), 0),
      0,
    );
    return variance >= 0 ? Math.sqrt(variance) : undefined;
  };
  return {
    family,
    distribution: model.distribution(natural),
    parameters: model.names.map((name, i) => {
      const variance = covariance?.[i]?.[i];
      const error = variance === undefined ? {} : { standardError: Math.sqrt(variance) };
      return { name, value: natural[i] ?? 0, ...error };
    }),
    logLikelihood: value,
    people: values.length,
    effectivePeople: total,
    aic: 2 * count - 2 * value,
    bic: count * Math.log(total) - 2 * value,
    atBoundary,
    standardErrorOf,
  };
}

/** A checked sample whose weights add up to the effective number of people. */
function prepare(
  values: readonly number[],
  weights: readonly number[] | undefined,
  least: number,
): FitSample {
  requireSample("values", values, least);
  if (weights !== undefined) requireWeights("weights", weights, values.length);
  const given = weights ?? values.map(() => 1);
  const sum = given.reduce((all, weight) => all + weight, 0);
  const effective = sum ** 2 / given.reduce((all, weight) => all + weight ** 2, 0);
  const scaled = given.map((weight) => (weight * effective) / sum);
  const { mean, variance, third } = weightedMoments(values, scaled);
  const sd = Math.sqrt(variance);
  if (!(sd > 1e-12 * Math.abs(mean))) throw new InvalidArgumentError("values", values, "values that differ");
  return { values, weights: scaled, mean, sd, skewness: third / sd ** 3 };
}

function requireAboveZero(values: readonly number[]): void {
  const index = values.findIndex((value) => !(value > 0));
  if (index >= 0) throw new InvalidArgumentError(`values[${index}]`, values[index], "a number above 0");
}
