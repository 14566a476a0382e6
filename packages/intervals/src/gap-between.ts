import { betweenCuts, compareCuts, lowerCut, upperCut } from "./cut.ts";
import type { Interval } from "./interval.ts";

/**
 * The hole between two intervals: what lies above the one and below the other. `undefined` when there
 * is no hole, that is when they share a number or one begins where the other ends.
 *
 * An end of the hole belongs to it where the interval's own end is open. Between `[1, 2)` and `(2, 3]`
 * the hole is the single point 2, of length zero, and still a hole.
 *
 * @example
 * ```ts
 * import { gapBetween, interval } from "@tapewise/intervals";
 * gapBetween(interval(430, 450), interval(480, 510)); // => { from: 450, to: 480, fromClosed: false, toClosed: false }
 * gapBetween(interval(430, 450), interval(450, 480)); // => undefined
 * ```
 */
export function gapBetween(a: Interval, b: Interval): Interval | undefined {
  const [first, second] = compareCuts(lowerCut(a), lowerCut(b)) <= 0 ? [a, b] : [b, a];
  return betweenCuts(upperCut(first), lowerCut(second));
}
