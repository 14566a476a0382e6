import { complement } from "./complement.ts";
import { intersectUnions } from "./intersect-unions.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * The numbers of `a` that do not belong to `b`.
 *
 * @example
 * ```ts
 * import { formatInterval, interval, subtract, union } from "@tapewise/intervals";
 * const left = subtract(union(interval(430, 510)), union(interval(450, 480)));
 * left.map((part) => formatInterval(part)); // => ["[430, 450)", "(480, 510]"]
 * ```
 */
export function subtract(a: IntervalUnion, b: IntervalUnion): IntervalUnion {
  return intersectUnions(a, complement(b));
}
