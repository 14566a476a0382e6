import type { Calibration } from "./calibration.ts";
import type { Cell } from "./settings.ts";

/** Every rule that is compared. */
export const rules = [
  "first-match",
  "nearest-centre",
  "no-prior",
  "cut",
  "cut-stature",
  "floor",
  "floor-other-half",
  "floor-misfit",
] as const;

/** A way to a size from readings. */
export type Rule = (typeof rules)[number];

/** The rules that state a probability: the library with less and with more to go on. */
export const libraryRules = ["no-prior", "cut", "cut-stature"] as const;

/** A rule of the library. */
export type LibraryRule = (typeof libraryRules)[number];

/** Sums over the repeats of each person, so that errors can be clustered by person. */
export interface RuleTally {
  /** Wrong sizes, of those trials in which some size fits. */
  readonly wrong: Float64Array;
  /** Sum, in mm, of the distance from the body to the size that was taken, over all trials. */
  readonly misfitMm: Float64Array;
}

/** What one cell of the study came to. */
export interface CellTally {
  readonly cell: Cell;
  readonly hasOverlap: boolean;
  readonly trials: number;
  /** For each person the trials in which some size fits. */
  readonly served: Float64Array;
  readonly rules: Readonly<Record<Rule, RuleTally>>;
  readonly calibration: Readonly<Record<LibraryRule, Calibration>>;
  /** Calibration with cut and stature where the stated error is not the true one. */
  readonly mistaken: readonly { readonly stated: string; readonly calibration: Calibration }[];
}

/** An empty tally for so many people. */
export function emptyTally(people: number): RuleTally {
  return { wrong: new Float64Array(people), misfitMm: new Float64Array(people) };
}
