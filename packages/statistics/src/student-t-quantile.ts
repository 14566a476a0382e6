import { normalQuantile } from "./normal-quantile.ts";
import { requireDegrees, requireProbability } from "./require-argument.ts";
import { solveInLogs } from "./solve-in-logs.ts";
import { studentDensity, studentFromZero, studentTail } from "./t-kernel.ts";

/**
 * The `t` below which a share `p` of Student's t distribution with `df` degrees of freedom lies.
 * −`Infinity` for 0 and `Infinity` for 1; `Infinity` degrees of freedom give the normal distribution. For a
 * small upper tail `q` take `-studentTQuantile(q, df)`, which keeps every digit.
 *
 * Newton's method on the distribution, from the approximation of D. L. Wallace (1959). Below one degree of
 * freedom a quantile can be beyond the largest double; it is then an infinity.
 *
 * @throws {@link InvalidArgumentError} when `p` is not a probability from 0 to 1 or `df` is below 10⁻¹⁰.
 *
 * @example
 * ```ts
 * import { studentTQuantile } from "@tapewise/statistics";
 * studentTQuantile(0.975, 4).toFixed(6); // => "2.776445"
 * studentTQuantile(0.5, 4); // => 0
 * ```
 */
export function studentTQuantile(p: number, df: number): number {
  requireProbability("p", p);
  requireDegrees("df", df);
  const z = Math.abs(normalQuantile(p));
  if (df === Number.POSITIVE_INFINITY || z === 0 || z === Number.POSITIVE_INFINITY) return normalQuantile(p);
  const slope = (t: number): number => t * studentDensity(t, df);
  const t =
    Math.abs(p - 0.5) < 0.25
      ? solveInLogs(
          { rising: true, probability: (t) => studentFromZero(t, df), slope },
          Math.abs(p - 0.5),
          wallaceStart(z, df),
        )
      : solveInLogs(
          { rising: false, probability: (t) => studentTail(t, df), slope },
          Math.min(p, 1 - p),
          wallaceStart(z, df),
        );
  return p < 0.5 ? -t : t;
}

/** ln t for the t whose tail is about that of the normal z. */
function wallaceStart(z: number, df: number): number {
  const v = (z * (8 * df + 3)) / (8 * df + 1);
  const exponent = (v * v) / df;
  const logGrowth = exponent > 30 ? exponent : Math.log(Math.expm1(exponent));
  return 0.5 * (Math.log(df) + logGrowth);
}
