import { createRandom } from "@tapewise/statistics";
import { requireCount, requireFinite } from "../require-number.ts";
import { type LessonError, requireLessonError } from "./lesson-error.ts";
import { drawSlip, readOnce, startSeries } from "./read-once.ts";

/** One series of readings to draw. */
export interface SeriesToDraw {
  /** The true length in mm. */
  readonly lengthMm: number;
  readonly error: LessonError;
  readonly count: number;
  /** Seed of the random numbers: any safe integer. */
  readonly seed: number;
}

/** Drawn readings, with what nobody who takes readings gets to see. All lengths in mm. */
export interface DrawnSeries {
  readonly readingsMm: readonly number[];
  /** By how much each reading slipped to a wrong landmark; 0 for most. */
  readonly slipsMm: readonly number[];
  /** What every reading of the series is off by before noise, slips and rounding: bias and what lasts. */
  readonly offsetMm: number;
}

/**
 * Draws a series of readings of one person by one measurer. The same seed gives the same series in every run, and
 * a longer series begins with the shorter one.
 *
 * @throws {@link InvalidArgumentError} when a figure is not finite or out of range, the count is no whole number
 * above 0, or the seed is not a safe integer.
 *
 * @example
 * ```ts
 * import { drawReadings } from "@tapewise/measurement";
 * const error = { biasMm: 4, lastingMm: 0, noiseMm: 0, stepMm: 5 };
 * drawReadings({ lengthMm: 436, error, count: 3, seed: 1 });
 * // => { readingsMm: [440, 440, 440], slipsMm: [0, 0, 0], offsetMm: 4 }
 * ```
 */
export function drawReadings({ lengthMm, error, count, seed }: SeriesToDraw): DrawnSeries {
  requireFinite("lengthMm", lengthMm);
  requireLessonError(error);
  requireCount("count", count);
  const random = createRandom(seed);
  const start = startSeries(lengthMm, error, random);
  const slipsMm: number[] = [];
  const readingsMm: number[] = [];
  for (let i = 0; i < count; i += 1) {
    const slip = drawSlip(error, random);
    slipsMm.push(slip);
    readingsMm.push(readOnce(start, slip, error, random));
  }
  return { readingsMm, slipsMm, offsetMm: start - lengthMm };
}
