import { earlierCut, laterCut, lowerCut, upperCut } from "./cut.ts";
import type { Interval } from "./interval.ts";

/**
 * The smallest interval that holds all the given ones, and with them the holes between them.
 *
 * @example
 * ```ts
 * import { hull, interval } from "@tapewise/intervals";
 * hull(interval(430, 450), interval(480, 510)); // => { from: 430, to: 510, fromClosed: true, toClosed: true }
 * ```
 */
export function hull(first: Interval, ...others: readonly Interval[]): Interval {
  let lower = lowerCut(first);
  let upper = upperCut(first);
  for (const other of others) {
    lower = earlierCut(lower, lowerCut(other));
    upper = laterCut(upper, upperCut(other));
  }
  return { from: lower.at, to: upper.at, fromClosed: !lower.after, toClosed: upper.after };
}
