import { InvalidArgumentError } from "@tapewise/outcome";
import type { Interval } from "./interval.ts";

/**
 * How far a number lies from an interval: 0 inside, else the distance to the nearer bound. At a bound
 * that does not belong the distance is 0 too: numbers of the interval come as near as one likes.
 *
 * @throws {@link InvalidArgumentError} when `x` is not a finite number.
 *
 * @example
 * ```ts
 * import { distanceTo, interval } from "@tapewise/intervals";
 * distanceTo(interval(430, 480), 455); // => 0
 * distanceTo(interval(430, 480), 492); // => 12
 * ```
 */
export function distanceTo(interval: Interval, x: number): number {
  if (!Number.isFinite(x)) throw new InvalidArgumentError("x", x, "a finite number");
  if (x < interval.from) return interval.from - x;
  return x > interval.to ? x - interval.to : 0;
}
