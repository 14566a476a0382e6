import { asUnion } from "./as-union.ts";
import { gapBetween } from "./gap-between.ts";
import type { Interval } from "./interval.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * The holes between the parts of a union, lowest first; what lies below the first part and above the
 * last is no hole. A union of one part, or of none, has no holes.
 *
 * @example
 * ```ts
 * import { formatInterval, gaps, interval, union } from "@tapewise/intervals";
 * const covered = union(interval(430, 450), interval(480, 510));
 * gaps(covered).map((part) => formatInterval(part)); // => ["(450, 480)"]
 * ```
 */
export function gaps(union: IntervalUnion): IntervalUnion {
  const holes: Interval[] = [];
  for (const [index, next] of union.entries()) {
    const previous = union[index - 1];
    const hole = previous === undefined ? undefined : gapBetween(previous, next);
    if (hole !== undefined) holes.push(hole);
  }
  return asUnion(holes);
}
