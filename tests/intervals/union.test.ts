import { atLeast, everything, formatInterval, interval, point, union } from "@tapewise/intervals";
import { expect, test } from "vitest";

const withoutEnd = { toClosed: false };
const withoutStart = { fromClosed: false };

test.each([
  ["nothing", [], []],
  ["one interval", [interval(1, 2)], ["[1, 2]"]],
  ["intervals apart, sorted", [interval(5, 6), interval(1, 2)], ["[1, 2]", "[5, 6]"]],
  ["overlapping ones", [interval(2, 4), interval(1, 3)], ["[1, 4]"]],
  ["nested ones", [interval(1, 6), interval(2, 3), interval(4, 5)], ["[1, 6]"]],
  ["a shared end", [interval(1, 2), interval(2, 3)], ["[1, 3]"]],
  ["adjacent ones", [interval(1, 2, withoutEnd), interval(2, 3)], ["[1, 3]"]],
  ["a missing point", [interval(1, 2, withoutEnd), interval(2, 3, withoutStart)], ["[1, 2)", "(2, 3]"]],
  [
    "a point that fills the hole",
    [interval(1, 2, withoutEnd), interval(2, 3, withoutStart), point(2)],
    ["[1, 3]"],
  ],
  ["a chain", [interval(1, 3), interval(5, 7), interval(2, 6)], ["[1, 7]"]],
  ["open and closed starts", [interval(1, 2, withoutStart), interval(1, 2, withoutEnd)], ["[1, 2]"]],
  ["one without a bound", [atLeast(2), interval(1, 3)], ["[1, ∞)"]],
  ["everything", [everything, point(2)], ["(-∞, ∞)"]],
])("of %s", (_, intervals, expected) => {
  expect(union(...intervals).map((part) => formatInterval(part))).toEqual(expected);
});

test("leaves the caller's list as it was", () => {
  const list = [interval(5, 6), interval(1, 2)];
  union(...list);
  expect(list).toEqual([interval(5, 6), interval(1, 2)]);
});
