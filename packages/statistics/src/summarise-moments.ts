import type { Moments } from "./moments.ts";
import type { Summary } from "./summary.ts";

/**
 * The summary of the sample, or of the merged samples, that the moments stand for.
 *
 * @example
 * ```ts
 * import { momentsOf, summariseMoments } from "@tapewise/statistics";
 * summariseMoments(momentsOf([430, 434, 438])); // => { n: 3, mean: 434, sd: 4, min: 430, max: 438 }
 * ```
 */
export function summariseMoments(moments: Moments): Summary {
  const { n, mean, squares, min, max } = moments;
  return { n, mean, sd: n === 1 ? undefined : Math.sqrt(squares / (n - 1)), min, max };
}
