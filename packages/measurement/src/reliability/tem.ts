import type { IntervalEstimate } from "./interval-estimate.ts";

/**
 * How the interval of a technical error is made.
 *
 * - `chi-square`: exact for normal errors of one size.
 * - `graybill-wang`: the modified large-sample method for sums of mean squares, because what lasts between
 *   measurers is common to all subjects and has few degrees of freedom of its own.
 */
export type TemIntervalMethod = "chi-square" | "graybill-wang";

/** A technical error of measurement (TEM) with what it rests on. */
export interface Tem {
  /** In mm: the standard deviation of one reading. */
  readonly mm: IntervalEstimate;
  readonly method: TemIntervalMethod;
  /** Per cent of `meanMm`, which is taken as exact: its own error is small beside that of the TEM. */
  readonly relative: IntervalEstimate;
  readonly degreesOfFreedom: number;
  /** Mean of the readings that it rests on. */
  readonly meanMm: number;
  /** Standard deviation of these readings, subjects and all, on n − 1. */
  readonly sdMm: number;
  /** Coefficient of reliability R = 1 − TEM²/SD². Absent where all readings are the same. */
  readonly reliability?: number;
  readonly readings: number;
  /** Subjects that it rests on, by name. */
  readonly subjects: readonly string[];
}

/** Technical errors of a study: of one measurer, between measurers, and both together. */
export interface TechnicalError {
  readonly confidence: number;
  /** Each measurer with a subject read more than once. */
  readonly perMeasurer: readonly { readonly measurer: string; readonly tem: Tem }[];
  /** All measurers pooled by their degrees of freedom. Absent where no subject was read twice by one measurer. */
  readonly intra?: Tem;
  /** Between the means that measurers have of the same subject. Absent where no subject has two measurers. */
  readonly inter?: Tem;
  /** A single reading by any measurer, the error within a measurer counted once. */
  readonly total?: Tem;
  /** √(intra² + inter²), the published sum, in mm. */
  readonly summedTotalMm?: number;
}
