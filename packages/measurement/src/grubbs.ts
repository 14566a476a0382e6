import { InvalidArgumentError } from "@tapewise/outcome";
import { studentTQuantile, summarise } from "@tapewise/statistics";

/** What Grubbs' test says of the reading farthest from the mean. */
export interface GrubbsResult {
  /** Position, from 0, of the value farthest from the mean. */
  readonly index: number;
  /** G = |value − mean| / s, with s on n − 1. */
  readonly statistic: number;
  readonly critical: number;
  readonly isOutlier: boolean;
}

/**
 * Critical value of Grubbs' two-sided test for one outlier:
 * G = (n−1)/√n · √(t² / (n−2+t²)) with t the upper α/(2n) point of Student's t, n−2 degrees of freedom
 * (Grubbs 1950, 1969). Exact up to 13 values at α = 0.05, a close upper bound beyond.
 *
 * @param count - number of values, 3 or more
 * @param significance - α, above 0 and below 1
 * @throws {@link InvalidArgumentError} for fewer than 3 values or an α outside (0, 1).
 *
 * @example
 * ```ts
 * import { grubbsCriticalValue } from "@tapewise/measurement";
 * grubbsCriticalValue(5, 0.05).toFixed(3); // => "1.715"
 * ```
 */
export function grubbsCriticalValue(count: number, significance: number): number {
  if (!(Number.isSafeInteger(count) && count >= 3)) {
    throw new InvalidArgumentError("count", count, "a whole number, 3 or more");
  }
  if (!(significance > 0 && significance < 1)) {
    throw new InvalidArgumentError("significance", significance, "above 0 and below 1");
  }
  const t = -studentTQuantile(significance / (2 * count), count - 2);
  // Written so that a t beyond 1e154 does not overflow when it is squared.
  return (count - 1) / Math.sqrt(count) / Math.sqrt(1 + (count - 2) / t / t);
}

/**
 * Grubbs' two-sided test on the value farthest from the mean.
 *
 * @throws {@link InvalidArgumentError} for fewer than 3 values or an α outside (0, 1).
 *
 * @example
 * ```ts
 * import { grubbsTest } from "@tapewise/measurement";
 * grubbsTest([432, 436, 434, 435, 470], 0.05).isOutlier; // => true
 * ```
 */
export function grubbsTest(values: readonly number[], significance: number): GrubbsResult {
  const critical = grubbsCriticalValue(values.length, significance);
  const { mean, sd } = summarise(values);
  let index = 0;
  let farthest = -1;
  values.forEach((value, position) => {
    const distance = Math.abs(value - mean);
    if (distance > farthest) {
      farthest = distance;
      index = position;
    }
  });
  // Values that do not differ have no outlier; their statistic would be 0/0.
  const statistic = sd === undefined || sd === 0 ? 0 : farthest / sd;
  return { index, statistic, critical, isOutlier: statistic > critical };
}
