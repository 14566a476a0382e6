import { betaSlope, betaTail, fromOdds } from "./beta-kernel.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { requireProbability, requireShape } from "./require-argument.ts";
import { solveInLogs } from "./solve-in-logs.ts";

/**
 * The value below which a share `p` of the F distribution with `df1` and `df2` degrees of freedom lies.
 * 0 for 0 and `Infinity` for 1.
 *
 * Newton's method on the distribution, from Fisher's normal approximation of ½ ln F.
 *
 * @throws {@link InvalidArgumentError} when `p` is not a probability from 0 to 1, or `df1` or `df2` is not
 * from 10⁻¹⁰ to 10¹⁰.
 *
 * @example
 * ```ts
 * import { fQuantile } from "@tapewise/statistics";
 * fQuantile(0.5, 7, 7).toFixed(12); // => "1.000000000000"
 * fQuantile(0.95, 1, 10).toFixed(6); // => "4.964603"
 * ```
 */
export function fQuantile(p: number, df1: number, df2: number): number {
  requireProbability("p", p);
  requireShape("df1", df1);
  requireShape("df2", df2);
  if (p === 0) return 0;
  if (p === 1) return Number.POSITIVE_INFINITY;
  const a = df1 / 2;
  const b = df2 / 2;
  const upper = p > 0.5;
  // Solved for the odds r = df1 F / df2 of the beta variable.
  const odds = solveInLogs(
    {
      rising: !upper,
      probability: (r) => {
        const [x, y] = fromOdds(r);
        return upper ? betaTail(y, x, b, a) : betaTail(x, y, a, b);
      },
      slope: (r) => betaSlope(...fromOdds(r), a, b),
    },
    upper ? 1 - p : p,
    Math.log(df1 / df2) + 1 / df2 - 1 / df1 + normalQuantile(p) * Math.sqrt(2 / df1 + 2 / df2),
  );
  return odds * (df2 / df1);
}
