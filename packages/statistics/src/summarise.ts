import { max, mean, min, sampleStandardDeviation } from "simple-statistics";
import { decimalDifferences } from "./decimal-differences.ts";
import { requireNoOverflow, requireValues } from "./require-values.ts";
import type { Summary } from "./summary.ts";

/** Values that are so much larger than their scatter show what their doubles lost of the decimals. */
const LARGE_PART = 1000;

/**
 * Size, mean, sample standard deviation, least and greatest of a sample. The standard deviation divides by
 * n − 1, and a single value has none.
 *
 * The mean is compensated and the deviation taken in two passes, where values share a large part from their
 * {@link decimalDifferences}: the part that they share costs no digit.
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
  const sd = values.length === 1 ? undefined : deviationOf(list, Math.abs(centre));
  requireNoOverflow("values", values, centre + (sd ?? 0));
  return { n: values.length, mean: centre, sd, min: min(list), max: max(list) };
}

function deviationOf(values: readonly number[], size: number): number {
  const sd = sampleStandardDeviation(values as number[]);
  return size > LARGE_PART * sd && sd > 0 ? sampleStandardDeviation([...decimalDifferences(values)]) : sd;
}
