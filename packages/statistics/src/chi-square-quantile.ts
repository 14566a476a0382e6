import { gammaSlope, gammaTail } from "./gamma-kernel.ts";
import { logGamma } from "./log-gamma.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { requireProbability, requireShape } from "./require-argument.ts";
import { solveInLogs } from "./solve-in-logs.ts";

/**
 * The value below which a share `p` of the chi-square distribution with `df` degrees of freedom lies.
 * 0 for 0 and `Infinity` for 1.
 *
 * Newton's method on the distribution, from the approximation of Wilson and Hilferty (1931) or, near zero,
 * from the leading term.
 *
 * @throws {@link InvalidArgumentError} when `p` is not a probability from 0 to 1 or `df` is not from
 * 10⁻¹⁰ to 10¹⁰.
 *
 * @example
 * ```ts
 * import { chiSquareQuantile } from "@tapewise/statistics";
 * chiSquareQuantile(0.95, 1).toFixed(6); // => "3.841459"
 * chiSquareQuantile(0, 5); // => 0
 * ```
 */
export function chiSquareQuantile(p: number, df: number): number {
  requireProbability("p", p);
  requireShape("df", df);
  if (p === 0) return 0;
  if (p === 1) return Number.POSITIVE_INFINITY;
  const a = df / 2;
  const upper = p > 0.5;
  const x = solveInLogs(
    {
      rising: !upper,
      probability: (x) => gammaTail(a, x, upper),
      slope: (x) => gammaSlope(a, x),
    },
    upper ? 1 - p : p,
    logStart(p, a),
  );
  return 2 * x;
}

/** ln x for the x whose incomplete gamma function P(a, x) is about p. */
function logStart(p: number, a: number): number {
  const cubeRoot = 1 - 1 / (9 * a) + normalQuantile(p) / Math.sqrt(9 * a);
  if (cubeRoot > 0.3) return Math.log(a) + 3 * Math.log(cubeRoot);
  return (Math.log(p) + logGamma(a + 1)) / a;
}
