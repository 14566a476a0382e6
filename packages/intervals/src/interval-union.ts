import type { Interval } from "./interval.ts";

declare const normalised: unique symbol;

/**
 * A set of numbers as a list of intervals, lowest first, with a hole between each and the next; the
 * empty list is the empty set. Two unions hold the same numbers exactly when their lists are equal.
 * The type remembers that the list was put in order: make one with `union`.
 */
export type IntervalUnion = readonly Interval[] & { readonly [normalised]: true };
