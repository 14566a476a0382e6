import type { DimensionId } from "@tapewise/landmarks";

/** The figures of a surveyed population, in the order of `dimensions`. */
export interface ReferencePopulation {
  readonly cut: "women" | "men";
  /** Whom the figures describe, for people. */
  readonly label: string;
  /** Where the figures come from. */
  readonly source: string;
  /** What the figures do not hold for. */
  readonly caveat: string;
  /** How many people were measured. */
  readonly count: number;
  /** The smallest and the greatest stature among them, in mm. */
  readonly surveyedStatureMm: { readonly from: number; readonly to: number };
  readonly dimensions: readonly DimensionId[];
  readonly meanMm: readonly number[];
  /** Sample standard deviations, on n − 1. */
  readonly sdMm: readonly number[];
  /** Pearson correlations. */
  readonly correlation: readonly (readonly number[])[];
}
