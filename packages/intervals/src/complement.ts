import { asUnion } from "./as-union.ts";
import { everything } from "./common-intervals.ts";
import { betweenCuts, lowerCut, upperCut } from "./cut.ts";
import type { Interval } from "./interval.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * The numbers that do not belong to a union.
 *
 * @example
 * ```ts
 * import { complement, formatInterval, interval, union } from "@tapewise/intervals";
 * const outside = complement(union(interval(430, 450), interval(480, 510)));
 * outside.map((part) => formatInterval(part)); // => ["(-∞, 430)", "(450, 480)", "(510, ∞)"]
 * ```
 */
export function complement(union: IntervalUnion): IntervalUnion {
  const parts: Interval[] = [];
  let lower = lowerCut(everything);
  for (const part of union) {
    const hole = betweenCuts(lower, lowerCut(part));
    if (hole !== undefined) parts.push(hole);
    lower = upperCut(part);
  }
  const rest = betweenCuts(lower, upperCut(everything));
  if (rest !== undefined) parts.push(rest);
  return asUnion(parts);
}
