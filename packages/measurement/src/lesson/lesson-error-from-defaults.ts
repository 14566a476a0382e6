import { dimensionKind } from "@tapewise/landmarks";
import type { Anticipation } from "../anticipate.ts";
import { assumeConditions } from "../conditions.ts";
import { errorDefaults } from "../data.ts";
import { methodFromDefaults, varianceOf } from "../method-error.ts";
import { requireLength, requireStep } from "../require-argument.ts";
import { requireDefaults } from "../require-defaults.ts";
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
  const { dimension, lengthMm, stepMm, conditions } = reading;
  requireLength("lengthMm", lengthMm);
  requireStep("stepMm", stepMm);
  const defaults = reading.defaults ?? errorDefaults;
  requireDefaults(defaults);
  const known = assumeConditions(conditions, defaults.ruleLengthMm);
  const method = methodFromDefaults(dimensionKind(dimension), lengthMm, known, defaults);
  return {
    biasMm: 0,
    lastingMm: Math.sqrt(varianceOf(method.lasting)),
    noiseMm: Math.sqrt(varianceOf(method.repeat)),
    stepMm,
    ...(slip === undefined ? {} : { slip }),
  };
}
