import { normalPdf } from "./normal-pdf.ts";
import { requireNumber, requirePositive } from "./require-argument.ts";
import { studentDensity } from "./t-kernel.ts";

/**
 * The density of Student's t distribution at `t` for `df` degrees of freedom, any number above zero;
 * `Infinity` degrees of freedom give the normal distribution.
 *
 * @throws {@link InvalidArgumentError} when `t` is `NaN` or `df` is not above zero.
 *
 * @example
 * ```ts
 * import { studentTPdf } from "@tapewise/statistics";
 * studentTPdf(0, 1).toFixed(12); // => "0.318309886184"
 * ```
 */
export function studentTPdf(t: number, df: number): number {
  requireNumber("t", t);
  requirePositive("df", df);
  return df === Number.POSITIVE_INFINITY ? normalPdf(t) : studentDensity(t, df);
}
