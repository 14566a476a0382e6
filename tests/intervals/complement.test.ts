import {
  atLeast,
  complement,
  everything,
  formatInterval,
  type Interval,
  interval,
  point,
  union,
} from "@tapewise/intervals";
import { expect, test } from "vitest";

const rest = (...intervals: readonly Interval[]) =>
  complement(union(...intervals)).map((part) => formatInterval(part));

test("turns closed ends into open ones and back", () => {
  expect(rest(interval(1, 2, { toClosed: false }), interval(3, 4))).toEqual(["(-∞, 1)", "[2, 3)", "(4, ∞)"]);
  expect(rest(point(2))).toEqual(["(-∞, 2)", "(2, ∞)"]);
  expect(rest(atLeast(2))).toEqual(["(-∞, 2)"]);
});

test("of nothing is everything, and of everything nothing", () => {
  expect(rest()).toEqual(["(-∞, ∞)"]);
  expect(rest(everything)).toEqual([]);
});
