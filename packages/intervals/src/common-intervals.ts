import { interval } from "./create-interval.ts";
import type { Interval } from "./interval.ts";

/**
 * Every finite number: the interval without bounds.
 *
 * @example
 * ```ts
 * import { everything, formatInterval } from "@tapewise/intervals";
 * formatInterval(everything); // => "(-∞, ∞)"
 * ```
 */
export const everything: Interval = {
  from: Number.NEGATIVE_INFINITY,
  to: Number.POSITIVE_INFINITY,
  fromClosed: false,
  toClosed: false,
};

/**
 * The numbers from `x` upwards, `x` among them.
 *
 * @throws {@link InvalidArgumentError} when `x` is `NaN` or `Infinity`.
 *
 * @example
 * ```ts
 * import { atLeast, formatInterval } from "@tapewise/intervals";
 * formatInterval(atLeast(480)); // => "[480, ∞)"
 * ```
 */
export function atLeast(x: number): Interval {
  return interval(x, Number.POSITIVE_INFINITY);
}

/**
 * The numbers up to `x`, `x` among them.
 *
 * @throws {@link InvalidArgumentError} when `x` is `NaN` or `-Infinity`.
 *
 * @example
 * ```ts
 * import { atMost, formatInterval } from "@tapewise/intervals";
 * formatInterval(atMost(430)); // => "(-∞, 430]"
 * ```
 */
export function atMost(x: number): Interval {
  return interval(Number.NEGATIVE_INFINITY, x);
}

/**
 * The number `x` alone, as an interval of length zero.
 *
 * @throws {@link InvalidArgumentError} when `x` is not a finite number.
 *
 * @example
 * ```ts
 * import { formatInterval, point } from "@tapewise/intervals";
 * formatInterval(point(460)); // => "[460, 460]"
 * ```
 */
export function point(x: number): Interval {
  return interval(x, x);
}
