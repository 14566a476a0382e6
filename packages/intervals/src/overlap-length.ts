import { intersect } from "./intersect.ts";
import type { Interval } from "./interval.ts";
import { intervalLength } from "./interval-length.ts";

/**
 * The length that two intervals have in common: 0 when they share nothing or one point only,
 * `Infinity` when what they share has no bound.
 *
 * @example
 * ```ts
 * import { interval, overlapLength } from "@tapewise/intervals";
 * overlapLength(interval(430, 480), interval(460, 510)); // => 20
 * overlapLength(interval(430, 480), interval(480, 530)); // => 0
 * ```
 */
export function overlapLength(a: Interval, b: Interval): number {
  const common = intersect(a, b);
  return common === undefined ? 0 : intervalLength(common);
}
