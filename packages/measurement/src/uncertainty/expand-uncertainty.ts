import { studentTQuantile } from "@tapewise/statistics";
import { requireDegrees, requireFinite, requireNotNegative, requireShare } from "../require-number.ts";

/** An expanded uncertainty and the interval it makes. */
export interface ExpandedUncertainty {
  readonly probability: number;
  /** Coverage factor k. */
  readonly factor: number;
  /** U = k u, in the unit of the value. */
  readonly expanded: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * The expanded uncertainty of a result (GUM 6.2.1 and G.3.2): U = k u with the coverage factor k from
 * Student's t at the effective degrees of freedom. They are not cut to a whole number; the GUM allows both.
 *
 * @throws {@link InvalidArgumentError} when a figure is not finite, the uncertainty is below 0, there are no
 * degrees of freedom, or the probability is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { expandUncertainty } from "@tapewise/measurement";
 * const { factor, expanded } = expandUncertainty({ value: 436, uncertainty: 4, degreesOfFreedom: 10 }, 0.95);
 * [factor.toFixed(3), expanded.toFixed(2)]; // => ["2.228", "8.91"]
 * ```
 */
export function expandUncertainty(
  result: { readonly value: number; readonly uncertainty: number; readonly degreesOfFreedom: number },
  probability: number,
): ExpandedUncertainty {
  const { value, uncertainty, degreesOfFreedom } = result;
  requireFinite("value", value);
  requireNotNegative("uncertainty", uncertainty);
  requireDegrees("degreesOfFreedom", degreesOfFreedom);
  requireShare("probability", probability);
  // The lower quantile, because a probability close to 1 keeps its digits there.
  const factor = Math.abs(studentTQuantile((1 - probability) / 2, degreesOfFreedom));
  const expanded = factor * uncertainty;
  return { probability, factor, expanded, lower: value - expanded, upper: value + expanded };
}
