import { requireCount } from "../require-number.ts";
import { roundingCorrelation } from "../rounding-correlation.ts";
import { type LessonError, requireLessonError } from "./lesson-error.ts";

/** How far a result is off. All in mm. */
export interface ExpectedError {
  /** On average over many series. */
  readonly biasMm: number;
  /** Standard deviation over many series. */
  readonly sdMm: number;
  /** Root of the mean square: √(bias² + sd²). */
  readonly rmseMm: number;
}

/**
 * How far the mean of n readings is off, without drawing any: bias b + p s, variance
 * l² + (σ² + v)/n + q²/12 (ρ + (1 − ρ)/n) with what lasts l, noise σ, the variance v of slips, the step q, and
 * the correlation ρ of two rounding errors, as if the true length lay anywhere between two marks.
 *
 * @throws {@link InvalidArgumentError} when a figure is not finite or out of range, or the count is no whole number
 * above 0.
 *
 * @example
 * ```ts
 * import { expectedMeanError } from "@tapewise/measurement";
 * expectedMeanError({ biasMm: 4, lastingMm: 0, noiseMm: 6, stepMm: 0 }, 4);
 * // => { biasMm: 4, sdMm: 3, rmseMm: 5 }
 * ```
 */
export function expectedMeanError(error: LessonError, count: number): ExpectedError {
  requireLessonError(error);
  requireCount("count", count);
  const { lastingMm, noiseMm, stepMm, slip } = error;
  const { meanMm, variance } = slipMoments(slip);
  const biasMm = error.biasMm + meanMm;
  const rounding = stepMm ** 2 / 12;
  // Slips part readings too, but seldom: it is the noise that carries most of them over the marks.
  const together = stepMm === 0 ? 0 : roundingCorrelation(noiseMm, stepMm);
  const shrinking = noiseMm ** 2 + variance + rounding * (1 - together);
  const sdMm = Math.sqrt(lastingMm ** 2 + rounding * together + shrinking / count);
  return { biasMm, sdMm, rmseMm: Math.hypot(biasMm, sdMm) };
}

function slipMoments(slip: LessonError["slip"]): { readonly meanMm: number; readonly variance: number } {
  if (slip === undefined) return { meanMm: 0, variance: 0 };
  const { chance, sizeMm, direction } = slip;
  const side = direction === "either" ? 0 : direction === "longer" ? 1 : -1;
  const meanMm = side * chance * sizeMm;
  return { meanMm, variance: chance * sizeMm ** 2 - meanMm ** 2 };
}
