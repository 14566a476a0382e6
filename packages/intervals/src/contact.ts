import { betweenCuts, compareCuts, earlierCut, laterCut, lowerCut, upperCut } from "./cut.ts";
import type { Interval } from "./interval.ts";

/**
 * How two intervals meet, from far to near. Exactly one holds for any two, in either order.
 *
 * | contact | common numbers | hole between | example |
 * | --- | --- | --- | --- |
 * | `apart` | none | of positive length | `[1, 2]` and `[3, 4]` |
 * | `split-by-point` | none | one single point | `[1, 2)` and `(2, 3]` |
 * | `adjacent` | none | none | `[1, 2)` and `[2, 3]` |
 * | `shared-end` | one point, at the end of both | none | `[1, 2]` and `[2, 3]` |
 * | `overlapping` | anything more | none | `[1, 3]` and `[2, 4]`; `[2, 2]` and `[1, 3]` |
 */
export type Contact = "apart" | "split-by-point" | "adjacent" | "shared-end" | "overlapping";

/**
 * How two intervals meet: see {@link Contact}. The order of the two makes no difference.
 *
 * A point is both of its own ends, so two equal points have the contact `shared-end`, and so have a
 * point and an interval that it closes.
 *
 * @example
 * ```ts
 * import { contact, interval } from "@tapewise/intervals";
 * contact(interval(430, 480), interval(480, 530)); // => "shared-end"
 * contact(interval(430, 480, { toClosed: false }), interval(480, 530)); // => "adjacent"
 * contact(interval(430, 480), interval(490, 530)); // => "apart"
 * ```
 */
export function contact(a: Interval, b: Interval): Contact {
  const lower = laterCut(lowerCut(a), lowerCut(b));
  const upper = earlierCut(upperCut(a), upperCut(b));
  if (compareCuts(lower, upper) === 0) return "adjacent";

  const hole = betweenCuts(upper, lower);
  if (hole !== undefined) return hole.from === hole.to ? "split-by-point" : "apart";

  // Something is common: a single point at the end of the one and the start of the other, or more.
  const shared = lower.at === upper.at && (a.to === b.from || b.to === a.from);
  return shared ? "shared-end" : "overlapping";
}
