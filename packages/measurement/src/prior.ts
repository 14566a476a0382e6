import type { DimensionId } from "@tapewise/landmarks";

/**
 * What is believed of a person's dimensions before any reading: a joint normal distribution, from a
 * population, better still from a cut and a stature.
 */
export interface Prior {
  /** What it describes, for people: "women 171 cm tall". */
  readonly label: string;
  /** Where the figures come from. */
  readonly source: string;
  /** What the figures do not hold for. */
  readonly caveat: string;
  readonly dimensions: readonly DimensionId[];
  /** Means in mm, in the order of `dimensions`. */
  readonly meanMm: readonly number[];
  /** Covariances in mm², a symmetric positive-definite matrix in the order of `dimensions`. */
  readonly covarianceMm2: readonly (readonly number[])[];
}
