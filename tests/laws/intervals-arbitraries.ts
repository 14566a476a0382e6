import { fc } from "@fast-check/vitest";
import {
  contains,
  type Interval,
  type IntervalUnion,
  interval,
  union,
  unionContains,
} from "@tapewise/intervals";

/** Whole bounds keep sums and differences exact, and few of them make shared ends common. */
const bound: fc.Arbitrary<number> = fc.integer({ min: -6, max: 6 });
const distinctBounds = fc.tuple(bound, bound).filter(([a, b]) => a !== b);

/** Longer than a point, with two bounds, and every combination of open and closed ends. */
export const boundedProper: fc.Arbitrary<Interval> = fc
  .tuple(distinctBounds, fc.boolean(), fc.boolean())
  .map(([[a, b], fromClosed, toClosed]) =>
    interval(Math.min(a, b), Math.max(a, b), { fromClosed, toClosed }),
  );

const point: fc.Arbitrary<Interval> = bound.map((x) => interval(x, x));

const unbounded: fc.Arbitrary<Interval> = fc.oneof(
  fc.tuple(bound, fc.boolean()).map(([x, toClosed]) => interval(-Infinity, x, { toClosed })),
  fc.tuple(bound, fc.boolean()).map(([x, fromClosed]) => interval(x, Infinity, { fromClosed })),
  fc.constant(interval(-Infinity, Infinity)),
);

/** Longer than a point, bounded or not: what Allen's relations are made for. */
export const proper: fc.Arbitrary<Interval> = fc.oneof(
  { weight: 3, arbitrary: boundedProper },
  { weight: 1, arbitrary: unbounded },
);

export const bounded: fc.Arbitrary<Interval> = fc.oneof(
  { weight: 4, arbitrary: boundedProper },
  { weight: 1, arbitrary: point },
);

export const anyInterval: fc.Arbitrary<Interval> = fc.oneof(
  { weight: 4, arbitrary: proper },
  { weight: 1, arbitrary: point },
);

export const anyUnion: fc.Arbitrary<IntervalUnion> = fc
  .array(anyInterval, { maxLength: 5 })
  .map((intervals) => union(...intervals));

/**
 * Numbers that tell any two sets with whole bounds from -6 to 6 apart: every bound, a number inside each
 * stretch between two bounds, and one beyond them all on either side.
 */
export const witnesses: readonly number[] = Array.from({ length: 27 }, (_, i) => (i - 13) / 2);

/** Which witnesses an interval holds: an account of the set that knows nothing of bounds and ends. */
export function members(set: Interval): readonly boolean[] {
  return witnesses.map((x) => contains(set, x));
}

export function unionMembers(set: IntervalUnion): readonly boolean[] {
  return witnesses.map((x) => unionContains(set, x));
}

export function shifted(set: Interval, by: number): Interval {
  return interval(set.from + by, set.to + by, { fromClosed: set.fromClosed, toClosed: set.toClosed });
}
