import { requireDegrees, requireNumber } from "./require-argument.ts";
import { studentUpperTail } from "./t-kernel.ts";

/**
 * P(T ≤ t) for Student's t distribution with `df` degrees of freedom, any number above zero; `Infinity`
 * degrees of freedom give the normal distribution. Accurate relative to itself in the lower tail; for the
 * upper tail take {@link studentTUpperTail}.
 *
 * The continued fraction of the incomplete beta function (DLMF 8.17.22) and, for many degrees of freedom,
 * a series about the normal distribution.
 *
 * @throws {@link InvalidArgumentError} when `t` is `NaN` or `df` is below 10⁻¹⁰.
 *
 * @example
 * ```ts
 * import { studentTCdf } from "@tapewise/statistics";
 * studentTCdf(0, 4); // => 0.5
 * studentTCdf(2.776445105, 4).toFixed(9); // => "0.975000000"
 * ```
 */
export function studentTCdf(t: number, df: number): number {
  requireNumber("t", t);
  requireDegrees("df", df);
  return studentUpperTail(-t, df);
}
