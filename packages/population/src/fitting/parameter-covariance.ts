import { CholeskyDecomposition, Matrix } from "ml-matrix";
import type { FamilyModel, FitSample } from "./family-model.ts";
import { gradient, hessian } from "./maximise.ts";

/** What the covariance of fitted parameters is computed from. */
export interface CovarianceInput {
  readonly model: FamilyModel;
  readonly natural: readonly number[];
  readonly scales: readonly number[];
  readonly sample: FitSample;
  readonly logLikelihood: (natural: readonly number[]) => number;
  /** Whether people have weights: the information alone would then count them wrongly. */
  readonly robust: boolean;
}

/**
 * The covariance matrix of maximum-likelihood estimates: the inverse of the observed information H, or, with
 * weights, H⁻¹ J H⁻¹ with J = Σ w² s sᵀ over the scores s (the sandwich of Huber and White). `undefined` where the
 * information is not positive definite.
 */
export function parameterCovariance(input: CovarianceInput): number[][] | undefined {
  const { model, natural, scales, sample, logLikelihood, robust } = input;
  const steps = scales.map((scale) => scale * 2e-4);
  const information = hessian(logLikelihood, natural, steps).map((row) => row.map((value) => -value));
  // In scaled coordinates, so that millimetres and shares do not upset the inverse.
  const scaled = information.map((row, i) =>
    row.map((value, j) => value * ((scales[i] ?? 1) * (scales[j] ?? 1))),
  );
  if (!scaled.flat().every(Number.isFinite)) return undefined;
  const decomposition = new CholeskyDecomposition(scaled);
  if (!decomposition.isPositiveDefinite()) return undefined;
  const inverse = decomposition.solve(Matrix.eye(scaled.length));
  const covariance = robust ? inverse.mmul(scores(model, natural, scales, sample)).mmul(inverse) : inverse;
  return covariance
    .to2DArray()
    .map((row, i) => row.map((value, j) => value * ((scales[i] ?? 1) * (scales[j] ?? 1))));
}

/** Σ w² s sᵀ in scaled coordinates. */
function scores(
  model: FamilyModel,
  natural: readonly number[],
  scales: readonly number[],
  sample: FitSample,
): Matrix {
  const steps = scales.map((scale) => scale * 1e-5);
  const sum = Matrix.zeros(natural.length, natural.length);
  for (const [index, value] of sample.values.entries()) {
    const weight = sample.weights[index] ?? 0;
    const slope = gradient((point) => model.logDensity(point)(value), natural, steps);
    const score = Matrix.columnVector(slope.map((each, i) => each * weight * (scales[i] ?? 1)));
    sum.add(score.mmul(score.transpose()));
  }
  return sum;
}
