import { atLeast, formatInterval, gaps, type Interval, interval, union } from "@tapewise/intervals";
import { expect, test } from "vitest";

const holes = (...intervals: readonly Interval[]) =>
  gaps(union(...intervals)).map((part) => formatInterval(part));

test("lists the holes between the parts, lowest first", () => {
  expect(holes(interval(7, 8), interval(1, 2), interval(4, 5))).toEqual(["(2, 4)", "(5, 7)"]);
});

test("a missing point is a hole", () => {
  expect(holes(interval(1, 2, { toClosed: false }), interval(2, 3, { fromClosed: false }))).toEqual([
    "[2, 2]",
  ]);
});

test("none in one part or in nothing, whatever lies around", () => {
  expect(holes(interval(1, 3), interval(2, 4))).toEqual([]);
  expect(holes(atLeast(3))).toEqual([]);
  expect(holes()).toEqual([]);
});
