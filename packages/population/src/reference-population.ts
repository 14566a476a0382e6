import type { DimensionId } from "@tapewise/landmarks";

/** The figures of a surveyed population, in the order of `dimensions`. */
export interface ReferencePopulation {
  readonly cut: "women" | "men";
  readonly label: string;
  readonly source: string;
  readonly caveat: string;
  /** How many people were measured. */
  readonly count: number;
  readonly dimensions: readonly DimensionId[];
  readonly meanMm: readonly number[];
  readonly sdMm: readonly number[];
  readonly correlation: readonly (readonly number[])[];
}
