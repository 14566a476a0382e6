import type { DimensionId } from "@tapewise/landmarks";
import type { IssuePath } from "@tapewise/outcome";
import type { LengthReading } from "@tapewise/units";
import type { Conditions } from "./conditions.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import type { StatedError } from "./stated-error.ts";

/** Readings of one dimension and what is known of how they were taken. */
export interface EstimateInput {
  readonly dimension: DimensionId;
  /** In the order in which they were taken: a drift shows in it, and nothing else depends on it. */
  readonly readings: readonly LengthReading[];
  readonly conditions?: Conditions;
  /** The error of the readings where it is known; replaces the table of defaults, so that conditions play no part. */
  readonly error?: StatedError;
  /** Another table of defaults. */
  readonly defaults?: ErrorDefaults;
  /** Probability of the coverage interval; 0.95 where it is left out. */
  readonly coverageProbability?: number;
  /** Where the readings sit in the caller's data. */
  readonly path?: IssuePath;
}
