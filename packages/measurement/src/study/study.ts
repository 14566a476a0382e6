import type { DimensionId } from "@tapewise/landmarks";
import type { IssuePath, Place } from "@tapewise/outcome";
import type { LengthUnit, Millimetres } from "@tapewise/units";

/** One cell of a study: the nth reading (from 1) that one measurer took of one subject. */
export interface StudyCell {
  readonly subject: string;
  readonly measurer: string;
  /** Which of the measurer's readings of this subject it is, counted from 1 in the order they were taken. */
  readonly repeat: number;
}

/** A cell that holds a length. What is known of its writing is kept, so that its digits can be judged. */
export interface StudyReading extends StudyCell {
  readonly mm: Millimetres;
  /** The text as it was written, without the unit where a header names it. Absent for data that never were text. */
  readonly text?: string;
  /** The unit in which it was written. */
  readonly unit?: LengthUnit;
  /** The step that the writing implies, in mm: 1 for 43.2 cm, 10 for 43 cm, 3.175 for 17 1/8 in. */
  readonly stepMm?: Millimetres;
  readonly path?: IssuePath;
  readonly place?: Place;
}

/**
 * Why a cell of the grid holds no length.
 *
 * - `left-empty`: it is there and says that there is no reading (empty, `-`, `NA`).
 * - `not-in-data`: the data do not mention it.
 * - `unreadable`: it says something that could not be read; an issue tells what.
 */
export type MissingReason = "left-empty" | "not-in-data" | "unreadable";

/** A cell of the grid subjects × measurers × repeats that holds no length. */
export interface MissingCell extends StudyCell {
  readonly because: MissingReason;
  readonly text?: string;
  readonly place?: Place;
}

/** A reading that was read but takes no part in computations: `code` is the code of the issue that says why. */
export interface SetAsideReading extends StudyReading {
  readonly code: string;
}

/**
 * A reliability study: readings of one dimension, in mm, of several subjects by one or more measurers,
 * each once or more often.
 *
 * Every cell of the grid `subjects` × `measurers` × 1…`repeats` is in exactly one of the three lists
 * `readings`, `missing` and `setAside`; only `readings` takes part in computations. A further reading of a cell
 * that has one already is set aside too.
 */
export interface Study {
  readonly dimension?: DimensionId;
  /** In the order of their first mention. Every one is kept, also one without a single reading. */
  readonly subjects: readonly string[];
  /** In the order of their first mention. */
  readonly measurers: readonly string[];
  /** The largest repeat number of any cell. */
  readonly repeats: number;
  readonly readings: readonly StudyReading[];
  readonly missing: readonly MissingCell[];
  readonly setAside: readonly SetAsideReading[];
}
