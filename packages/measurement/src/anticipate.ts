import { type DimensionId, dimensionKind } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { assumeConditions, type Conditions } from "./conditions.ts";
import { errorDefaults } from "./data.ts";
import { budgetFor, methodFromDefaults } from "./error-budget.ts";
import type { ErrorDefaults } from "./error-defaults.ts";

/** Readings that are not yet taken. */
export interface Anticipation {
  readonly dimension: DimensionId;
  /** About how long the dimension is, in mm: stretch and joints grow with it. */
  readonly lengthMm: number;
  readonly count: number;
  /** The step in mm that readings will be rounded to. */
  readonly stepMm: number;
  readonly conditions: Conditions;
  readonly defaults?: ErrorDefaults;
}

/**
 * The standard uncertainty, in mm, that readings not yet taken will have by the table of defaults.
 *
 * @throws {@link InvalidArgumentError} when the count is no whole number above 0, or a length is not finite.
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
  if (!(Number.isFinite(lengthMm) && lengthMm > 0)) {
    throw new InvalidArgumentError("lengthMm", lengthMm, "a finite length above 0");
  }
  if (!(Number.isFinite(stepMm) && stepMm >= 0)) {
    throw new InvalidArgumentError("stepMm", stepMm, "a finite step, 0 or more");
  }
  const defaults = anticipation.defaults ?? errorDefaults;
  const known = assumeConditions(conditions, defaults.ruleLengthMm);
  const method = methodFromDefaults(dimensionKind(dimension), lengthMm, known, defaults);
  // The expected spread of readings to come is the method's own: as if it had been seen just so.
  const repeat = method.repeat.reduce((sum, part) => sum + part.variance, 0);
  const sampleMm = Math.sqrt(repeat + stepMm ** 2 / 12);
  return budgetFor({ count, meanMm: lengthMm, sampleMm, stepMm }, method).uncertaintyMm;
}
