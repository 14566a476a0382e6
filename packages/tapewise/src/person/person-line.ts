import type { BuildFeature } from "@tapewise/fit";
import type { DimensionId, MeasuredBy, Tool } from "@tapewise/landmarks";
import type { StatedError } from "@tapewise/measurement";
import type { LengthUnit } from "@tapewise/units";

/** Whose survey figures stand for what is known of a person beforehand. */
export type PersonCut = "women" | "men";

/**
 * One person as text brings them: a line of the batch contract, or the file that `--person` names.
 * Everything but the readings may be left out.
 */
export interface PersonLine {
  /** Comes back unchanged with the answer. */
  readonly id?: string | number;
  readonly cut?: PersonCut;
  /** Standing height, with its unit. */
  readonly stature?: string | number;
  readonly measuredBy?: MeasuredBy;
  readonly tool?: Tool;
  /** Length of the rule, with its unit, for the tool `short-rule`. */
  readonly ruleLength?: string | number;
  /** Whether the bones were found anew before every reading. */
  readonly landmarksFoundAfresh?: boolean;
  /** The unit of lengths that name none. Without it, a bare number is an issue. */
  readonly unit?: LengthUnit;
  readonly error?: StatedError;
  readonly build?: readonly BuildFeature[];
  readonly firstPack?: boolean;
  /** Readings as they were written down, in the order in which they were taken. */
  readonly readings: Readonly<Partial<Record<DimensionId, readonly (string | number)[]>>>;
}
