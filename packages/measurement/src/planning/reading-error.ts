import { requireDegrees, requireNotNegative } from "../require-number.ts";

/** What readings of one kind err by; an `Estimate` has both figures. */
export interface ReadingError {
  /** The part of one reading, in mm, that averaging shrinks. */
  readonly perReadingMm: number;
  /** The part, in mm, that stays however often the same way of reading is repeated. */
  readonly lastingMm: number;
}

/** How well the two parts are known. */
export interface ReadingErrorDegrees {
  /** Degrees of freedom of the part that averages out; infinite where they are left out. */
  readonly perReadingDegreesOfFreedom?: number;
  /** Degrees of freedom of the part that lasts; infinite where they are left out. */
  readonly lastingDegreesOfFreedom?: number;
}

/** The standard uncertainty, in mm, of the mean of `count` readings. */
export function uncertaintyOf({ perReadingMm, lastingMm }: ReadingError, count: number): number {
  return Math.hypot(lastingMm, perReadingMm / Math.sqrt(count));
}

export function requireReadingError(error: ReadingError & ReadingErrorDegrees): void {
  requireNotNegative("perReadingMm", error.perReadingMm);
  requireNotNegative("lastingMm", error.lastingMm);
  const infinite = Number.POSITIVE_INFINITY;
  requireDegrees("perReadingDegreesOfFreedom", error.perReadingDegreesOfFreedom ?? infinite);
  requireDegrees("lastingDegreesOfFreedom", error.lastingDegreesOfFreedom ?? infinite);
}
