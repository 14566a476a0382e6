import { sampleQuantile } from "./sample-quantile.ts";

/**
 * The middle value of a sample, or the mean of the two in the middle. In the unit of the values.
 *
 * @throws {@link InvalidArgumentError} when there is no value or one is not finite.
 *
 * @example
 * ```ts
 * import { median } from "@tapewise/statistics";
 * median([438, 430, 434]); // => 434
 * median([430, 434]); // => 432
 * ```
 */
export function median(values: readonly number[]): number {
  return sampleQuantile(values, 0.5, 7);
}
