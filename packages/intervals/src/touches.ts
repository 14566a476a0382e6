import { contact } from "./contact.ts";
import type { Interval } from "./interval.ts";

/**
 * Whether two intervals touch without overlapping: they share exactly one point, at the end of both,
 * or one begins where the other stops, without a hole and without a common number. In the words of
 * {@link contact}: `shared-end` or `adjacent`.
 *
 * `[1, 2)` and `(2, 3]` do not touch: both leave out the 2, which is a hole of zero length.
 *
 * @example
 * ```ts
 * import { interval, touches } from "@tapewise/intervals";
 * touches(interval(430, 480), interval(480, 530)); // => true
 * touches(interval(430, 480), interval(470, 530)); // => false
 * ```
 */
export function touches(a: Interval, b: Interval): boolean {
  const found = contact(a, b);
  return found === "shared-end" || found === "adjacent";
}
