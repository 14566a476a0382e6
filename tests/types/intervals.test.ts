import {
  type AllenRelation,
  compose,
  contains,
  gapBetween,
  hull,
  type Interval,
  type IntervalUnion,
  intersect,
  interval,
  intervalLength,
  midpoint,
  safeInterval,
  union,
  unionContains,
  unionLength,
} from "@tapewise/intervals";
import type { Outcome } from "@tapewise/outcome";
import { expect, expectTypeOf, test } from "vitest";

const some = interval(1, 2);

test("what may be missing says so in its type", () => {
  expectTypeOf(intersect(some, some)).toEqualTypeOf<Interval | undefined>();
  expectTypeOf(gapBetween(some, some)).toEqualTypeOf<Interval | undefined>();
  expectTypeOf(midpoint(some)).toEqualTypeOf<number | undefined>();
  expectTypeOf(safeInterval(1, 2)).toEqualTypeOf<Outcome<Interval>>();

  // @ts-expect-error the intersection may be empty
  expect(() => intervalLength(intersect(interval(1, 2), interval(3, 4)))).toThrow(TypeError);
});

test("a list of intervals is no union until `union` has put it in order", () => {
  const list: readonly Interval[] = [interval(1, 3), interval(2, 4)];
  // @ts-expect-error the overlap from 2 to 3 would count twice
  expect(unionLength(list)).toBe(4);
  expect(unionLength(union(...list))).toBe(3);
  // @ts-expect-error a single interval is not a union
  expect(() => unionContains(some, 1)).toThrow(TypeError);
});

test("a union can be read as a list, but not changed", () => {
  const parts: IntervalUnion = union(some);
  expectTypeOf(parts).toExtend<readonly Interval[]>();
  // @ts-expect-error a union has no push
  expect(typeof parts.push).toBe("function");
});

test("an interval cannot be changed", () => {
  const mine = interval(1, 2);
  // @ts-expect-error bounds are read only
  mine.from = 0;
  expect(contains(mine, 0)).toBe(true);
});

test("ends are named, and the hull of nothing does not exist", () => {
  // @ts-expect-error there is no such end
  expect(interval(1, 2, { closed: true })).toEqual(some);
  // @ts-expect-error at least one interval
  expect(() => hull()).toThrow(TypeError);
  // @ts-expect-error a bound is a number, never text
  expect(safeInterval("1", 2).ok).toBe(false);
});

test("relations are a closed list of names", () => {
  expectTypeOf(compose("meets", "during")).toEqualTypeOf<readonly AllenRelation[]>();
  // @ts-expect-error Allen has no "within"
  expect(() => compose("within", "during")).toThrow(TypeError);
});
