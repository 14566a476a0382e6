import type { Anticipation } from "../anticipation.ts";
import { methodAhead } from "../method-ahead.ts";
import { varianceOf } from "../method-error.ts";
import type { LandmarkSlip, LessonError } from "./lesson-error.ts";

/**
 * How somebody's readings err by the table of defaults, for a lesson: what changes from reading to reading, what
 * lasts, and the step of the tape. There is no bias that everybody shares.
 *
 * @param slip - a slip to a wrong landmark, if there is to be one: the table of defaults holds none
 * @throws {@link InvalidArgumentError} as `anticipateUncertainty` does.
 *
 * @example
 * ```ts
 * import { lessonErrorFromDefaults } from "@tapewise/measurement";
 * const error = lessonErrorFromDefaults({
 *   dimension: "torso-length", lengthMm: 430, stepMm: 5, conditions: { tool: "tape", measuredBy: "self" },
 * });
 * [error.noiseMm, error.lastingMm.toFixed(2), error.stepMm]; // => [6, "7.11", 5]
 * ```
 */
export function lessonErrorFromDefaults(
  reading: Omit<Anticipation, "count">,
  slip?: LandmarkSlip,
): LessonError {
  const { method } = methodAhead(reading);
  return {
    biasMm: 0,
    lastingMm: Math.sqrt(varianceOf(method.lasting)),
    noiseMm: Math.sqrt(varianceOf(method.repeat)),
    stepMm: reading.stepMm,
    ...(slip === undefined ? {} : { slip }),
  };
}
