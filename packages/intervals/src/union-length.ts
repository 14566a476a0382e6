import { intervalLength } from "./interval-length.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * The length of all parts of a union together: 0 for the empty one, `Infinity` where a bound is
 * missing.
 *
 * @example
 * ```ts
 * import { interval, union, unionLength } from "@tapewise/intervals";
 * unionLength(union(interval(430, 450), interval(440, 460), interval(480, 510))); // => 60
 * ```
 */
export function unionLength(union: IntervalUnion): number {
  return union.reduce((sum, part) => sum + intervalLength(part), 0);
}
