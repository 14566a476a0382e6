import type { Interval } from "./interval.ts";

/**
 * The length of an interval, upper bound minus lower: 0 for a point, `Infinity` where a bound is
 * missing. Whether the ends belong makes no difference.
 *
 * @example
 * ```ts
 * import { atLeast, interval, intervalLength } from "@tapewise/intervals";
 * intervalLength(interval(430, 480)); // => 50
 * intervalLength(atLeast(430)); // => Infinity
 * ```
 */
export function intervalLength(interval: Interval): number {
  return interval.to - interval.from;
}
