import type { Anticipation } from "../anticipation.ts";
import { sumErrors } from "../error-sum.ts";
import { methodAhead } from "../method-ahead.ts";
import { combineUncertainties } from "../welch-satterthwaite.ts";
import type { ReadingError, ReadingErrorDegrees } from "./reading-error.ts";

/**
 * How somebody's readings will err by the table of defaults, before any is taken: the part of a reading that averaging
 * shrinks and the part that stays, rounding in both, with the degrees of freedom that the table is worth. To plan with.
 *
 * @throws {@link InvalidArgumentError} as `anticipateUncertainty` does.
 *
 * @example
 * ```ts
 * import { anticipateError, planReadings } from "@tapewise/measurement";
 * const error = anticipateError({
 *   dimension: "torso-length", lengthMm: 430, stepMm: 1, conditions: { tool: "tape", measuredBy: "helper" },
 * });
 * error.perReadingMm.toFixed(2); // => "4.01"
 * planReadings(error, { standardMm: 4 }).isReachable; // => false
 * ```
 */
export function anticipateError(
  reading: Omit<Anticipation, "count">,
): ReadingError & Required<ReadingErrorDegrees> {
  const { method } = methodAhead(reading);
  const { perReadingMm, lastingMm } = sumErrors({ count: 1, stepMm: reading.stepMm }, method);
  const lasting = method.lasting.map(({ variance, degreesOfFreedom }) => ({
    uncertainty: Math.sqrt(variance),
    degreesOfFreedom,
  }));
  const { degreesOfFreedom } =
    lasting.length === 0 ? { degreesOfFreedom: Number.POSITIVE_INFINITY } : combineUncertainties(lasting);
  return {
    perReadingMm,
    lastingMm,
    perReadingDegreesOfFreedom: method.repeatDegreesOfFreedom,
    lastingDegreesOfFreedom: degreesOfFreedom,
  };
}
