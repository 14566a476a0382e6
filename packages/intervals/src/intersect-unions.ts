import { asUnion } from "./as-union.ts";
import { compareCuts, upperCut } from "./cut.ts";
import { intersect } from "./intersect.ts";
import type { Interval } from "./interval.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * The numbers that belong to both unions.
 *
 * @example
 * ```ts
 * import { atMost, formatInterval, interval, intersectUnions, union } from "@tapewise/intervals";
 * const covered = union(interval(430, 450), interval(480, 510));
 * intersectUnions(covered, union(atMost(490))).map((part) => formatInterval(part)); // => ["[430, 450]", "[480, 490]"]
 * ```
 */
export function intersectUnions(a: IntervalUnion, b: IntervalUnion): IntervalUnion {
  const parts: Interval[] = [];
  let i = 0;
  let j = 0;
  for (;;) {
    const ofA = a[i];
    const ofB = b[j];
    if (ofA === undefined || ofB === undefined) return asUnion(parts);
    const common = intersect(ofA, ofB);
    if (common !== undefined) parts.push(common);
    // Whichever stops first can meet nothing further on.
    if (compareCuts(upperCut(ofA), upperCut(ofB)) <= 0) i += 1;
    else j += 1;
  }
}
