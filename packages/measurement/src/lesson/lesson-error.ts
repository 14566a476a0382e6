import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite, requireNotNegative } from "../require-number.ts";

/** A slip to a wrong landmark: a vertebra too high, the hip bone instead of its crest. */
export interface LandmarkSlip {
  /** Chance of a slip in one reading, 0 to 1. */
  readonly chance: number;
  /** By how much it misses, in mm, above 0. */
  readonly sizeMm: number;
  readonly direction: "longer" | "shorter" | "either";
}

/** How readings err, for a lesson. All lengths in mm. */
export interface LessonError {
  /** What is added to every reading of everybody. */
  readonly biasMm: number;
  /** Standard deviation of what is drawn once for a series and stays in all its readings. */
  readonly lastingMm: number;
  /** Standard deviation of what is drawn anew for each reading. */
  readonly noiseMm: number;
  /** The step that readings are rounded to; 0 for none. */
  readonly stepMm: number;
  /** Without it nobody slips. */
  readonly slip?: LandmarkSlip;
}

/** Refuses an error model with a figure that is none. */
export function requireLessonError(error: LessonError): void {
  requireFinite("error.biasMm", error.biasMm);
  requireNotNegative("error.lastingMm", error.lastingMm);
  requireNotNegative("error.noiseMm", error.noiseMm);
  requireNotNegative("error.stepMm", error.stepMm);
  if (error.slip === undefined) return;
  const { chance, sizeMm, direction } = error.slip;
  if (!(chance >= 0 && chance <= 1))
    throw new InvalidArgumentError("error.slip.chance", chance, "from 0 to 1");
  requireNotNegative("error.slip.sizeMm", sizeMm);
  if (!["longer", "shorter", "either"].includes(direction)) {
    throw new InvalidArgumentError("error.slip.direction", direction, "longer, shorter or either");
  }
}
