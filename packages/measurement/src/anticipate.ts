import { dimensionKind } from "@tapewise/landmarks";
import type { Anticipation } from "./anticipation.ts";
import { fillConditions } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import { sumErrors } from "./error-sum.ts";
import { methodAhead } from "./method-ahead.ts";
import { type MethodError, methodFromDefaults, varianceOf } from "./method-error.ts";
import { requireCount } from "./require-number.ts";
import { shownVariance } from "./scatter-behind.ts";

/**
 * The standard uncertainty, in mm, that readings not yet taken will have by the table of defaults.
 *
 * @throws {@link InvalidArgumentError} when the count is no whole number above 0, a length or a step is not
 * finite, a condition is none, or the table of defaults has a figure that is none.
 *
 * @example
 * ```ts
 * import { anticipateUncertainty } from "@tapewise/measurement";
 * const alone = anticipateUncertainty({
 *   dimension: "torso-length", lengthMm: 430, count: 3, stepMm: 1, conditions: { measuredBy: "self" },
 * });
 * const helped = anticipateUncertainty({
 *   dimension: "torso-length", lengthMm: 430, count: 3, stepMm: 1, conditions: { measuredBy: "helper" },
 * });
 * helped < alone; // => true
 * ```
 */
export function anticipateUncertainty(anticipation: Anticipation): number {
  const { count, stepMm } = anticipation;
  requireCount("count", count);
  return uncertaintyAhead(count, stepMm, methodAhead(anticipation).method);
}

/**
 * As {@link anticipateUncertainty}, by the table of defaults of this package and under conditions that are known to be
 * ones, such as those of an estimate: it checks nothing else and so is a good deal smaller in a page.
 *
 * @throws {@link InvalidArgumentError} for a tool or a measurer that the table of defaults does not have.
 *
 * @example
 * ```ts
 * import { anticipateUncertainty, anticipateUnchecked } from "@tapewise/measurement";
 * const readings = { dimension: "torso-length", lengthMm: 430, count: 3, stepMm: 1, conditions: {} } as const;
 * anticipateUnchecked(readings) === anticipateUncertainty(readings); // => true
 * ```
 */
export function anticipateUnchecked(anticipation: Omit<Anticipation, "defaults">): number {
  const { dimension, lengthMm, count, stepMm, conditions } = anticipation;
  const known = fillConditions(conditions, errorDefaults.ruleLengthMm);
  const method = methodFromDefaults(dimensionKind(dimension), lengthMm, known, errorDefaults);
  return uncertaintyAhead(count, stepMm, method);
}

function uncertaintyAhead(count: number, stepMm: number, method: MethodError): number {
  // Readings to come are expected to scatter as the method does: as if they had been seen to do so.
  const sampleMm = Math.sqrt(shownVariance(varianceOf(method.repeat), stepMm));
  return sumErrors({ count, sampleMm, stepMm }, method).uncertaintyMm;
}
