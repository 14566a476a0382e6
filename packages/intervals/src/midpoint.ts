import type { Interval } from "./interval.ts";

/**
 * The middle of an interval; `undefined` where a bound is missing, because then there is none.
 *
 * @example
 * ```ts
 * import { atLeast, interval, midpoint } from "@tapewise/intervals";
 * midpoint(interval(430, 480)); // => 455
 * midpoint(atLeast(430)); // => undefined
 * ```
 */
export function midpoint(interval: Interval): number | undefined {
  const { from, to } = interval;
  if (!Number.isFinite(from) || !Number.isFinite(to)) return undefined;
  const sum = from + to;
  // Two bounds near the largest number have no finite sum, though they have a middle.
  return Number.isFinite(sum) ? sum / 2 : from / 2 + to / 2;
}
