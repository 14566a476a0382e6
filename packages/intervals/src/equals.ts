import type { Interval } from "./interval.ts";

/**
 * Whether two intervals hold the same numbers: the same bounds, and the same ends belong.
 *
 * @example
 * ```ts
 * import { equals, interval } from "@tapewise/intervals";
 * equals(interval(430, 480), interval(430, 480)); // => true
 * equals(interval(430, 480), interval(430, 480, { toClosed: false })); // => false
 * ```
 */
export function equals(a: Interval, b: Interval): boolean {
  return a.from === b.from && a.to === b.to && a.fromClosed === b.fromClosed && a.toClosed === b.toClosed;
}
