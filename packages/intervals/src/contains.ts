import { InvalidArgumentError } from "@tapewise/outcome";
import type { Interval } from "./interval.ts";

/**
 * Whether a number belongs to an interval. An infinity belongs to none.
 *
 * @throws {@link InvalidArgumentError} when `x` is `NaN`: "outside" would be a false answer.
 *
 * @example
 * ```ts
 * import { contains, interval } from "@tapewise/intervals";
 * contains(interval(430, 480), 480); // => true
 * contains(interval(430, 480, { toClosed: false }), 480); // => false
 * ```
 */
export function contains(interval: Interval, x: number): boolean {
  if (Number.isNaN(x)) throw new InvalidArgumentError("x", x, "a number");
  if (x < interval.from || x > interval.to) return false;
  if (x === interval.from && !interval.fromClosed) return false;
  return x !== interval.to || interval.toClosed;
}
