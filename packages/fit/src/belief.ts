import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate, Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { UncertainLength } from "./location-scale.ts";

/** One dimension after readings and prior are put together. */
export interface Belief extends UncertainLength {
  readonly dimension: DimensionId;
  readonly from: "readings" | "prior" | "readings-and-prior";
  readonly estimate?: Estimate;
  /** What the prior alone says; absent where it says nothing of this dimension. */
  readonly priorMeanMm?: number;
  readonly priorSdMm?: number;
}

/** Everything believed of one person. */
export interface Beliefs {
  readonly list: readonly Belief[];
  readonly of: (dimension: DimensionId) => Belief | undefined;
  /** Correlation of two dimensions after the readings; 0 where they are independent. */
  readonly correlation: (first: DimensionId, second: DimensionId) => number;
}

/**
 * Puts estimates and prior together (normal conjugate update, one reading at a time).
 *
 * Without a prior an estimate stands for itself. With one, the posterior covariance Σ solves
 * Σ⁻¹ = C⁻¹ + diag(1/u²). The doubt about each u travels on: 1/νᵢ = Σⱼ (Σᵢⱼ² / (uⱼ² Σᵢᵢ))² / νⱼ, the
 * Welch–Satterthwaite argument applied to the posterior variance.
 */
export function formBeliefs(estimates: readonly Estimate[], prior: Prior | undefined): Beliefs {
  const joint = prior === undefined ? undefined : updatePrior(prior, estimates);
  const list: Belief[] = [];
  for (const estimate of estimates) {
    if (joint?.dimensions.includes(estimate.dimension)) continue;
    list.push({
      dimension: estimate.dimension,
      meanMm: estimate.mm,
      sdMm: estimate.uncertaintyMm,
      degreesOfFreedom: estimate.degreesOfFreedom,
      from: "readings",
      estimate,
    });
  }
  joint?.dimensions.forEach((dimension, i) => {
    const estimate = estimates.find((one) => one.dimension === dimension);
    list.push({
      dimension,
      meanMm: at(joint.mean, i),
      sdMm: Math.sqrt(Math.max(0, at(at(joint.covariance, i), i))),
      degreesOfFreedom: degreesOf(joint, i, estimates),
      from: estimate === undefined ? "prior" : "readings-and-prior",
      priorMeanMm: at(joint.priorMean, i),
      priorSdMm: Math.sqrt(at(at(joint.priorCovariance, i), i)),
      ...(estimate === undefined ? {} : { estimate }),
    });
  });
  const positions = new Map(list.map((belief) => [belief.dimension, belief]));
  return {
    list,
    of: (dimension) => positions.get(dimension),
    correlation: (first, second) => correlationOf(joint, first, second),
  };
}

interface Joint {
  readonly dimensions: readonly DimensionId[];
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly priorMean: readonly number[];
  readonly priorCovariance: readonly (readonly number[])[];
}

function updatePrior(prior: Prior, estimates: readonly Estimate[]): Joint {
  checkPrior(prior);
  let mean: readonly number[] = prior.meanMm;
  let covariance: readonly (readonly number[])[] = prior.covarianceMm2;
  for (const estimate of estimates) {
    const read = prior.dimensions.indexOf(estimate.dimension);
    if (read < 0) continue;
    const column = covariance.map((row) => at(row, read));
    const total = at(column, read) + estimate.uncertaintyMm ** 2;
    if (total === 0) continue;
    const surprise = estimate.mm - at(mean, read);
    mean = mean.map((value, i) => value + (at(column, i) * surprise) / total);
    covariance = covariance.map((row, i) =>
      row.map((value, j) => value - (at(column, i) * at(column, j)) / total),
    );
  }
  return {
    dimensions: prior.dimensions,
    mean,
    covariance,
    priorMean: prior.meanMm,
    priorCovariance: prior.covarianceMm2,
  };
}

function degreesOf(joint: Joint, i: number, estimates: readonly Estimate[]): number {
  const variance = at(at(joint.covariance, i), i);
  let inverse = 0;
  for (const estimate of estimates) {
    const j = joint.dimensions.indexOf(estimate.dimension);
    const own = estimate.uncertaintyMm ** 2;
    if (j < 0 || own === 0 || variance <= 0) continue;
    inverse += (at(at(joint.covariance, i), j) ** 2 / (own * variance)) ** 2 / estimate.degreesOfFreedom;
  }
  return inverse === 0 ? Number.POSITIVE_INFINITY : 1 / inverse;
}

function correlationOf(joint: Joint | undefined, first: DimensionId, second: DimensionId): number {
  if (first === second) return 1;
  const i = joint?.dimensions.indexOf(first) ?? -1;
  const j = joint?.dimensions.indexOf(second) ?? -1;
  if (joint === undefined || i < 0 || j < 0) return 0;
  const scale = Math.sqrt(at(at(joint.covariance, i), i) * at(at(joint.covariance, j), j));
  return scale > 0 ? Math.max(-1, Math.min(1, at(at(joint.covariance, i), j) / scale)) : 0;
}

/** How far two mirrored covariances may differ by rounding, as a part of the largest possible one. */
const ROUNDING = 1e-9;

function checkPrior(prior: Prior): void {
  const size = prior.dimensions.length;
  const isSquare =
    prior.covarianceMm2.length === size && prior.covarianceMm2.every((row) => row.length === size);
  if (prior.meanMm.length !== size || !isSquare) {
    throw new InvalidArgumentError(
      "prior",
      prior.covarianceMm2,
      "means and covariances for each of its dimensions",
    );
  }
  if (new Set(prior.dimensions).size !== size) {
    throw new InvalidArgumentError("prior.dimensions", prior.dimensions, "different dimensions");
  }
  for (let i = 0; i < size; i += 1) {
    const variance = at(at(prior.covarianceMm2, i), i);
    if (!(Number.isFinite(at(prior.meanMm, i)) && Number.isFinite(variance) && variance > 0)) {
      throw new InvalidArgumentError("prior", variance, "finite means and variances above 0");
    }
    for (let j = 0; j < i; j += 1) {
      const value = at(at(prior.covarianceMm2, i), j);
      const bound = Math.sqrt(variance * at(at(prior.covarianceMm2, j), j));
      const isSymmetric = Math.abs(value - at(at(prior.covarianceMm2, j), i)) <= ROUNDING * bound;
      if (!isSymmetric || !(Math.abs(value) < bound)) {
        throw new InvalidArgumentError("prior.covarianceMm2", value, "a symmetric positive-definite matrix");
      }
    }
  }
}

function at<T>(list: readonly T[], index: number): T {
  const value = list[index];
  if (value === undefined)
    throw new InvalidArgumentError("prior", list, "means and covariances of equal length");
  return value;
}
