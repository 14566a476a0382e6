import { asUnion } from "./as-union.ts";
import { compareCuts, lowerCut, upperCut } from "./cut.ts";
import { hull } from "./hull.ts";
import type { Interval } from "./interval.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * The numbers that belong to at least one of the intervals. Intervals that overlap or touch become
 * one; `[1, 2)` and `(2, 3]` stay two, because the 2 is missing. Two unions are joined by
 * `union(...a, ...b)`.
 *
 * @example
 * ```ts
 * import { formatInterval, interval, union } from "@tapewise/intervals";
 * const covered = union(interval(480, 510), interval(430, 450), interval(445, 460));
 * covered.map((part) => formatInterval(part)); // => ["[430, 460]", "[480, 510]"]
 * ```
 */
export function union(...intervals: readonly Interval[]): IntervalUnion {
  const ascending = intervals.toSorted((a, b) => compareCuts(lowerCut(a), lowerCut(b)));
  const parts: Interval[] = [];
  for (const next of ascending) {
    const last = parts.at(-1);
    const apart = last === undefined || compareCuts(upperCut(last), lowerCut(next)) < 0;
    if (apart) parts.push(next);
    else parts[parts.length - 1] = hull(last, next);
  }
  return asUnion(parts);
}
