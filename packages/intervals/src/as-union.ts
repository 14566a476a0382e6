import type { Interval } from "./interval.ts";
import type { IntervalUnion } from "./interval-union.ts";

/** Vouches that a list is in order; only for lists that were built so. */
export function asUnion(parts: readonly Interval[]): IntervalUnion {
  return parts as IntervalUnion;
}
