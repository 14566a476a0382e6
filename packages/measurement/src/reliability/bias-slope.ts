import type { IntervalEstimate } from "./interval-estimate.ts";

/**
 * Proportional bias: the line difference = intercept + slope × mean, by least squares. A slope also shows where
 * the two only scatter unequally; with equal scatter it means that they differ more, the larger the subject (J. M.
 * Bland & D. G. Altman, 1995, Lancet 346, 1085–1087).
 */
export interface BiasSlope extends IntervalEstimate {
  readonly standardError: number;
  readonly intercept: number;
  /** Standard deviation of the differences about the line. */
  readonly residualSd: number;
  readonly degreesOfFreedom: number;
  /** Of the two-sided t test of "the slope is 0". */
  readonly pValue: number;
}
