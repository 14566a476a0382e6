import { contains } from "./contains.ts";
import type { IntervalUnion } from "./interval-union.ts";

/**
 * Whether a number belongs to a union.
 *
 * @throws {@link InvalidArgumentError} when `x` is `NaN` and the union is not empty.
 *
 * @example
 * ```ts
 * import { interval, union, unionContains } from "@tapewise/intervals";
 * const covered = union(interval(430, 450), interval(480, 510));
 * unionContains(covered, 490); // => true
 * unionContains(covered, 460); // => false
 * ```
 */
export function unionContains(union: IntervalUnion, x: number): boolean {
  return union.some((part) => contains(part, x));
}
