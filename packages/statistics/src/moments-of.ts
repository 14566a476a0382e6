import { max, mean, min, sumNthPowerDeviations } from "simple-statistics";
import type { Moments } from "./moments.ts";
import { requireNoOverflow, requireValues } from "./require-values.ts";

/**
 * The moments of a sample: what {@link mergeMoments} joins and {@link summariseMoments} reads.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, or their squares are
 * beyond the range of doubles.
 *
 * @example
 * ```ts
 * import { momentsOf } from "@tapewise/statistics";
 * momentsOf([430, 434]); // => { n: 2, mean: 432, squares: 8, min: 430, max: 434 }
 * ```
 */
export function momentsOf(values: readonly number[]): Moments {
  requireValues("values", values);
  // The library's types ask for a list they may change; it does not change it.
  const list = values as number[];
  const squares = sumNthPowerDeviations(list, 2);
  requireNoOverflow("values", values, squares);
  return { n: values.length, mean: mean(list), squares, min: min(list), max: max(list) };
}
