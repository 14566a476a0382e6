import { type DimensionId, dimensionKind } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { assumeConditions, type Conditions } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import { budgetFor } from "./error-budget.ts";
import type { ErrorDefaults } from "./error-defaults.ts";
import { methodFromDefaults, varianceOf } from "./method-error.ts";
import { requireLength, requireStep } from "./require-argument.ts";
import { requireDefaults } from "./require-defaults.ts";
import { shownVariance } from "./scatter-behind.ts";

/** Readings that are not yet taken. */
export interface Anticipation {
  readonly dimension: DimensionId;
  /** About how long the dimension is, in mm: stretch and joints grow with it. */
  readonly lengthMm: number;
  readonly count: number;
  /** The step in mm that readings will be rounded to; 0 for none. */
  readonly stepMm: number;
  readonly conditions: Conditions;
  readonly defaults?: ErrorDefaults;
}

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
  const { dimension, lengthMm, count, stepMm, conditions } = anticipation;
  if (!(Number.isSafeInteger(count) && count > 0)) {
    throw new InvalidArgumentError("count", count, "a whole number above 0");
  }
  requireLength("lengthMm", lengthMm);
  requireStep("stepMm", stepMm);
  const defaults = anticipation.defaults ?? errorDefaults;
  requireDefaults(defaults);
  const known = assumeConditions(conditions, defaults.ruleLengthMm);
  const method = methodFromDefaults(dimensionKind(dimension), lengthMm, known, defaults);
  // Readings to come are expected to scatter as the method does: as if they had been seen to do so.
  const sampleMm = Math.sqrt(shownVariance(varianceOf(method.repeat), stepMm));
  return budgetFor({ count, sampleMm, stepMm }, method).uncertaintyMm;
}
