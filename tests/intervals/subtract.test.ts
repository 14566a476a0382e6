import { atMost, formatInterval, type Interval, interval, point, subtract, union } from "@tapewise/intervals";
import { expect, test } from "vitest";

const left = (a: Interval, ...b: readonly Interval[]) =>
  subtract(union(a), union(...b)).map((part) => formatInterval(part));

test.each([
  ["nothing", interval(1, 5), [], ["[1, 5]"]],
  ["the middle", interval(1, 5), [interval(2, 3)], ["[1, 2)", "(3, 5]"]],
  ["a single point", interval(1, 5), [point(3)], ["[1, 3)", "(3, 5]"]],
  ["an end point", interval(1, 5), [point(5)], ["[1, 5)"]],
  [
    "an open interval: its ends stay",
    interval(1, 5),
    [interval(1, 5, { fromClosed: false, toClosed: false })],
    ["[1, 1]", "[5, 5]"],
  ],
  ["more than all", interval(1, 5), [atMost(9)], []],
  ["something elsewhere", interval(1, 5), [interval(7, 8)], ["[1, 5]"]],
])("taking away %s", (_, a, b, expected) => {
  expect(left(a, ...b)).toEqual(expected);
});
