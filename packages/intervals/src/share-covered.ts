import { intersect } from "./intersect.ts";
import type { Interval } from "./interval.ts";
import type { IntervalUnion } from "./interval-union.ts";
import { union } from "./union.ts";
import { unionContains } from "./union-contains.ts";

/**
 * The share of `a`, by length, that `by` covers: from 0 (none) to 1 (all but single points).
 *
 * - A point has no length: its share is 1 when it belongs to `by`, else 0.
 * - An unbounded `a` is judged by what happens far out: the share is the limit of the covered share of
 *   `a` within `[-r, r]` as `r` grows. So it is 1 when `by` covers `a` from some number outwards, 0
 *   when `by` is bounded on that side, and one half when `a` is everything and `by` goes on
 *   in one direction only.
 *
 * @example
 * ```ts
 * import { atLeast, interval, shareCovered, union } from "@tapewise/intervals";
 * shareCovered(interval(430, 480), interval(460, 510)); // => 0.4
 * shareCovered(interval(430, 480), union(interval(420, 440), interval(470, 510))); // => 0.4
 * shareCovered(atLeast(430), atLeast(480)); // => 1
 * ```
 */
export function shareCovered(a: Interval, by: Interval | IntervalUnion): number {
  const cover = "from" in by ? union(by) : by;
  if (a.from === a.to) return unionContains(cover, a.from) ? 1 : 0;

  const openBelow = a.from === Number.NEGATIVE_INFINITY;
  const openAbove = a.to === Number.POSITIVE_INFINITY;
  if (openBelow || openAbove) {
    const coveredBelow = openBelow && cover.at(0)?.from === Number.NEGATIVE_INFINITY;
    const coveredAbove = openAbove && cover.at(-1)?.to === Number.POSITIVE_INFINITY;
    return (Number(coveredBelow) + Number(coveredAbove)) / (Number(openBelow) + Number(openAbove));
  }

  // Two bounds near the largest number have no finite distance; half of each has.
  const scale = Number.isFinite(a.to - a.from) ? 1 : 0.5;
  let covered = 0;
  for (const part of cover) {
    const common = intersect(a, part);
    if (common !== undefined) covered += common.to * scale - common.from * scale;
  }
  // Rounded lengths may add up to a hair more than the whole.
  return Math.min(1, covered / (a.to * scale - a.from * scale));
}
