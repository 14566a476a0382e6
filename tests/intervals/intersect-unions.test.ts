import {
  atLeast,
  everything,
  formatInterval,
  type Interval,
  intersectUnions,
  interval,
  union,
} from "@tapewise/intervals";
import { expect, test } from "vitest";

const parts = (a: readonly Interval[], b: readonly Interval[]) =>
  intersectUnions(union(...a), union(...b)).map((part) => formatInterval(part));

test("keeps what both hold, part by part", () => {
  expect(parts([interval(1, 4), interval(6, 9)], [interval(2, 7), interval(8, 12)])).toEqual([
    "[2, 4]",
    "[6, 7]",
    "[8, 9]",
  ]);
});

test("keeps single common points", () => {
  expect(parts([interval(1, 2), interval(4, 5)], [interval(2, 4)])).toEqual(["[2, 2]", "[4, 4]"]);
});

test("of something and nothing is nothing; of something and everything is itself", () => {
  expect(parts([interval(1, 2)], [])).toEqual([]);
  expect(parts([], [interval(1, 2)])).toEqual([]);
  expect(parts([interval(1, 2), atLeast(5)], [everything])).toEqual(["[1, 2]", "[5, ∞)"]);
});
