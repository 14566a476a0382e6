import { betweenCuts, earlierCut, laterCut, lowerCut, upperCut } from "./cut.ts";
import type { Interval } from "./interval.ts";

/**
 * The numbers that belong to both intervals; `undefined` when there are none.
 *
 * @example
 * ```ts
 * import { atLeast, interval, intersect } from "@tapewise/intervals";
 * intersect(interval(430, 480), atLeast(460)); // => { from: 460, to: 480, fromClosed: true, toClosed: true }
 * intersect(interval(430, 480), atLeast(490)); // => undefined
 * ```
 */
export function intersect(a: Interval, b: Interval): Interval | undefined {
  return betweenCuts(laterCut(lowerCut(a), lowerCut(b)), earlierCut(upperCut(a), upperCut(b)));
}
