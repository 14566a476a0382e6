import { requireDegrees, requireNumber } from "./require-argument.ts";
import { studentDensity } from "./t-kernel.ts";

/**
 * The density of Student's t distribution at `t` for `df` degrees of freedom, any number above zero;
 * `Infinity` degrees of freedom give the normal distribution.
 *
 * @throws {@link InvalidArgumentError} when `t` is `NaN` or `df` is below 10⁻¹⁰.
 *
 * @example
 * ```ts
 * import { studentTPdf } from "@tapewise/statistics";
 * studentTPdf(0, 1).toFixed(12); // => "0.318309886184"
 * ```
 */
export function studentTPdf(t: number, df: number): number {
  requireNumber("t", t);
  requireDegrees("df", df);
  return studentDensity(t, df);
}
