import type { DimensionId } from "@tapewise/landmarks";
import type { Conditions } from "./conditions.ts";
import type { ErrorDefaults } from "./error-defaults.ts";

/** Readings that are not yet taken. */
export interface Anticipation {
  readonly dimension: DimensionId;
  /** About how long the dimension is, in mm: stretch and joints grow with it. */
  readonly lengthMm: number;
  readonly count: number;
  /** The step in mm that readings will be rounded to; 0 for none. */
  readonly stepMm: number;
  readonly conditions: Conditions;
  readonly defaults?: ErrorDefaults;
}
