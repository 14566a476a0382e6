import { requireDegrees, requireNumber } from "./require-argument.ts";
import { studentUpperTail } from "./t-kernel.ts";

/**
 * P(T > t) for Student's t distribution with `df` degrees of freedom, accurate relative to itself however
 * small it is; `Infinity` degrees of freedom give the normal distribution.
 *
 * @throws {@link InvalidArgumentError} when `t` is `NaN` or `df` is below 10⁻¹⁰.
 *
 * @example
 * ```ts
 * import { studentTUpperTail } from "@tapewise/statistics";
 * studentTUpperTail(1, 1).toFixed(12); // => "0.250000000000"
 * studentTUpperTail(Infinity, 3); // => 0
 * ```
 */
export function studentTUpperTail(t: number, df: number): number {
  requireNumber("t", t);
  requireDegrees("df", df);
  return studentUpperTail(t, df);
}
