import { integrateFromZero } from "./integrate.ts";
import { normalIntervalProbability } from "./normal-interval-probability.ts";
import { requireDegrees, requireOrdered } from "./require-argument.ts";
import { studentDensity, studentFromZero, studentTail, studentUpperTail } from "./t-kernel.ts";

/**
 * P(a < T < b) for Student's t distribution with `df` degrees of freedom, accurate relative to itself: in
 * either tail, across the middle, and for an interval however narrow. The bounds and `df` may be infinite.
 *
 * @throws {@link InvalidArgumentError} when a bound is `NaN`, `a` is above `b` or `df` is below 10⁻¹⁰.
 *
 * @example
 * ```ts
 * import { studentTIntervalProbability } from "@tapewise/statistics";
 * studentTIntervalProbability(-1, 1, 1).toFixed(12); // => "0.500000000000"
 * studentTIntervalProbability(3, 3, 8); // => 0
 * ```
 */
export function studentTIntervalProbability(a: number, b: number, df: number): number {
  requireOrdered("a", a, "b", b);
  requireDegrees("df", df);
  if (df === Number.POSITIVE_INFINITY) return normalIntervalProbability(a, b);
  if (a >= 0) return beyondZero(a, b, df);
  if (b <= 0) return beyondZero(-b, -a, df);
  if (a === Number.NEGATIVE_INFINITY) return studentUpperTail(-b, df);
  if (b === Number.POSITIVE_INFINITY) return studentUpperTail(a, df);
  return studentFromZero(b, df) + studentFromZero(-a, df);
}

/** The same for 0 ≤ a ≤ b. */
function beyondZero(a: number, b: number, df: number): number {
  if (a === b) return 0;
  const width = b - a;
  const reach = Math.hypot(Math.sqrt(df), a);
  const power = (df + 1) / 2;
  // The fall of the density from a to a + u, as a share of its height at a.
  const fall = (u: number): number => power * Math.log1p((u / reach) * ((2 * a + u) / reach));
  // Over a narrow interval the tails are nearly equal and their difference would lose digits.
  if (width <= reach / 2 && fall(width) <= 1) {
    return studentDensity(a, df) * integrateFromZero((u) => Math.exp(-fall(u)), width);
  }
  return studentTail(a, df) - studentTail(b, df);
}
