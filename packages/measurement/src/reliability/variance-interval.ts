import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareQuantile } from "@tapewise/statistics";
import { requireShare } from "../require-number.ts";
import type { IntervalEstimate } from "./interval-estimate.ts";

/** A mean square of an analysis of variance, with its weight in a sum. */
export interface WeightedMeanSquare {
  /** 0 or more. */
  readonly weight: number;
  readonly meanSquare: number;
  readonly degreesOfFreedom: number;
}

/**
 * A weighted sum of independent mean squares, with a confidence interval: the modified large-sample method of
 * F. A. Graybill & C.-M. Wang (1980, Journal of the American Statistical Association 75, 869–873). Lower end
 * θ − √Σ(G·w·MS)² with G = 1 − ν/χ²(upper), upper end θ + √Σ(H·w·MS)² with H = ν/χ²(lower) − 1.
 *
 * With a single mean square it is the exact chi-square interval of a variance.
 *
 * @param confidence - probability of the interval, above 0 and below 1
 * @throws {@link InvalidArgumentError} when there is no mean square, a weight or a mean square is negative, degrees
 * of freedom are not above 0, or the confidence is out of range.
 *
 * @example
 * ```ts
 * import { varianceInterval } from "@tapewise/measurement";
 * const { value, lower, upper } = varianceInterval([{ weight: 1, meanSquare: 4, degreesOfFreedom: 10 }], 0.95);
 * [value, lower.toFixed(3), upper.toFixed(3)]; // => [4, "1.953", "12.319"]
 * ```
 */
export function varianceInterval(parts: readonly WeightedMeanSquare[], confidence: number): IntervalEstimate {
  requireShare("confidence", confidence);
  if (!(Array.isArray(parts) && parts.length > 0)) {
    throw new InvalidArgumentError("parts", parts, "one mean square or more");
  }
  let value = 0;
  let down = 0;
  let up = 0;
  for (const { weight, meanSquare, degreesOfFreedom: df } of parts) {
    if (!(weight >= 0 && meanSquare >= 0 && weight * meanSquare < Number.POSITIVE_INFINITY)) {
      throw new InvalidArgumentError("parts", weight * meanSquare, "weights and mean squares of 0 or more");
    }
    if (!(df > 0)) throw new InvalidArgumentError("degreesOfFreedom", df, "above 0");
    const part = weight * meanSquare;
    value += part;
    down = Math.hypot(down, part * (1 - df / chiSquareQuantile((1 + confidence) / 2, df)));
    up = Math.hypot(up, part * (df / chiSquareQuantile((1 - confidence) / 2, df) - 1));
  }
  return { value, lower: Math.max(0, value - down), upper: value + up };
}
