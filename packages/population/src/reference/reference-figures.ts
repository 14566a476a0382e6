import type { DimensionId } from "@tapewise/landmarks";

/** What the reference survey has figures of: no girth around the crests, under the bust or of the neck. */
export type ReferenceVariable =
  | Exclude<DimensionId, "hip-belt-girth" | "underbust-girth" | "neck-base-girth">
  | "mass-kg";

/** The shares for which the quantile tables give a value. */
export const quantileShares: readonly number[] = [0.01, 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.99];

/** What was computed of one sex of the survey. */
export interface ReferenceFigures {
  readonly people: number;
  /** Means in mm (kg for body mass), in the order of `measuredVariables`. */
  readonly mean: readonly number[];
  /** Sample covariances with n − 1, in mm², kg² or mm·kg: the rows of the lower triangle. */
  readonly covariance: readonly (readonly number[])[];
  /** The least and the greatest value and, between them, a quantile for each of `quantileShares`. */
  readonly quantiles: Readonly<Record<ReferenceVariable, readonly number[]>>;
}
