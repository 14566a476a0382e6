import type { AllenRelation } from "./allen-relation.ts";
import type { Interval } from "./interval.ts";

/**
 * The one of Allen's thirteen relations that `a` has to `b`, by the places of their bounds on the line.
 *
 * - Whether ends belong is not looked at: Allen's intervals have places for ends, neither open nor
 *   closed. `[1, 2]`, `[1, 2)` and `(1, 2]` all meet `[2, 3]`; `contact` tells them apart.
 * - Missing bounds are places too, and the same place for every interval that lacks them: `(-∞, 1]`
 *   starts `(-∞, 2]`.
 * - Allen leaves points out, because a point at the start of `b` would both meet and start it. Here
 *   sharing a bound comes first: a point stands `before`, `starts`, `during`, `finishes` or `after` an
 *   interval (the five of M. Vilain, "A system for reasoning about time", AAAI-82), and `before`,
 *   `equals` or `after` another point. `converse` still holds for points; `compose` does not.
 *
 * @example
 * ```ts
 * import { interval, relation } from "@tapewise/intervals";
 * relation(interval(430, 480), interval(460, 510)); // => "overlaps"
 * relation(interval(430, 480), interval(480, 530)); // => "meets"
 * ```
 */
export function relation(a: Interval, b: Interval): AllenRelation {
  if (a.from === b.from) {
    if (a.to === b.to) return "equals";
    return a.to < b.to ? "starts" : "started-by";
  }
  if (a.to === b.to) return a.from < b.from ? "finished-by" : "finishes";
  if (a.to <= b.from) return a.to < b.from ? "before" : "meets";
  if (a.from >= b.to) return a.from > b.to ? "after" : "met-by";
  if (a.from < b.from) return a.to < b.to ? "overlaps" : "contains";
  return a.to < b.to ? "during" : "overlapped-by";
}
