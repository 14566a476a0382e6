import { integrateFromZero } from "./integrate.ts";
import { fromZero, gaussian, INVERSE_ROOT_TWO_PI, upperTail } from "./normal-kernel.ts";
import { requireOrdered } from "./require-argument.ts";

/**
 * P(a < Z < b) for a standard normal variable, accurate relative to itself: far out in either tail, across
 * the middle, and for an interval however narrow. The bounds may be infinite.
 *
 * @throws {@link InvalidArgumentError} when a bound is `NaN` or `a` is above `b`.
 *
 * @example
 * ```ts
 * import { normalIntervalProbability } from "@tapewise/statistics";
 * normalIntervalProbability(-Infinity, 0); // => 0.5
 * normalIntervalProbability(-1, 1).toFixed(6); // => "0.682689"
 * normalIntervalProbability(8, 9).toPrecision(4); // => "6.220e-16"
 * ```
 */
export function normalIntervalProbability(a: number, b: number): number {
  requireOrdered("a", a, "b", b);
  if (a >= 0) return beyondZero(a, b);
  if (b <= 0) return beyondZero(-b, -a);
  if (a === Number.NEGATIVE_INFINITY) return upperTail(-b);
  if (b === Number.POSITIVE_INFINITY) return upperTail(a);
  return fromZero(b) + fromZero(-a);
}

/** The same for 0 ≤ a ≤ b. */
function beyondZero(a: number, b: number): number {
  const width = b - a;
  // Over a narrow interval the tails are nearly equal and their difference would lose digits.
  if (width * (a + width / 2) <= 1) {
    return INVERSE_ROOT_TWO_PI * gaussian(a) * integrateFromZero((u) => Math.exp(-u * (a + u / 2)), width);
  }
  return upperTail(a) - upperTail(b);
}
