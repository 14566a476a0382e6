import { incompleteBeta } from "@tapewise/statistics";
import { requireConfidence, requireProbability, requireSample } from "../require-argument.ts";

/** An interval between two values of a sample that holds a percentile of the people it was drawn from. */
export interface PercentileInterval {
  /** Absent where the sample is too small to say anything on this side. */
  readonly lower?: number;
  readonly upper?: number;
  /** The probability with which such an interval holds the percentile; at least the one asked for if both ends are there. */
  readonly coverage: number;
}

/**
 * A confidence interval of a percentile that assumes no curve: between the order statistics of ranks l and u
 * lies the p-quantile with probability Σ C(n, k) pᵏ (1 − p)ⁿ⁻ᵏ for k from l to u − 1 (H. A. David & H. N. Nagaraja,
 * 2003, Order Statistics, 7.1). Each side keeps within half of what may be missed. People must count alike.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, `p` is not from 0 to 1, or the
 * confidence is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { percentileInterval } from "@tapewise/population";
 * const torsos = [388, 393, 397, 400, 402, 404, 409, 411, 415, 421];
 * const middle = percentileInterval(torsos, 0.5, 0.95);
 * [middle.lower, middle.upper]; // => [393, 415]
 * middle.coverage.toFixed(4); // => "0.9785"
 * percentileInterval(torsos, 0.95, 0.95).upper; // => undefined
 * ```
 */
export function percentileInterval(
  values: readonly number[],
  p: number,
  confidence: number,
): PercentileInterval {
  requireSample("values", values, 1);
  requireProbability("p", p);
  requireConfidence("confidence", confidence);
  const sorted = Float64Array.from(values).sort();
  const n = sorted.length;
  const miss = (1 - confidence) / 2;
  /** The chance that fewer than `rank` people lie at or below the percentile. */
  const fewerThan = (rank: number): number =>
    rank <= 0 ? 0 : rank > n ? 1 : 1 - incompleteBeta(p, rank, n - rank + 1);
  // Rounding must not throw away an interval that is exact.
  const slack = 1e-12;
  let low = 0;
  while (low < n && fewerThan(low + 1) <= miss + slack) low += 1;
  let high = n + 1;
  while (high > 1 && 1 - fewerThan(high - 1) <= miss + slack) high -= 1;
  const coverage = fewerThan(high) - fewerThan(low);
  const lower = low >= 1 ? sorted[low - 1] : undefined;
  const upper = high <= n ? sorted[high - 1] : undefined;
  return {
    ...(lower === undefined ? {} : { lower }),
    ...(upper === undefined ? {} : { upper }),
    coverage: Math.min(Math.max(coverage, 0), 1),
  };
}
