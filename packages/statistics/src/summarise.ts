import { max, mean, min, sampleStandardDeviation } from "simple-statistics";
import { requireNoOverflow, requireValues } from "./require-values.ts";
import type { Summary } from "./summary.ts";

/**
 * Size, mean, sample standard deviation, least and greatest of a sample. The standard deviation divides by
 * n − 1, and a single value has none.
 *
 * The mean is compensated and the deviation taken in two passes, so that values with a large common part
 * lose nothing.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, or their squares are
 * beyond the range of doubles.
 *
 * @example
 * ```ts
 * import { summarise } from "@tapewise/statistics";
 * summarise([430, 434, 438]); // => { n: 3, mean: 434, sd: 4, min: 430, max: 438 }
 * summarise([432]).sd; // => undefined
 * ```
 */
export function summarise(values: readonly number[]): Summary {
  requireValues("values", values);
  // The library's types ask for a list they may change; it does not change it.
  const list = values as number[];
  const centre = mean(list);
  const sd = values.length === 1 ? undefined : sampleStandardDeviation(list);
  requireNoOverflow("values", values, centre + (sd ?? 0));
  return { n: values.length, mean: centre, sd, min: min(list), max: max(list) };
}
