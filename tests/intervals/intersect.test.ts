import {
  atLeast,
  atMost,
  everything,
  formatInterval,
  type Interval,
  intersect,
  interval,
  point,
} from "@tapewise/intervals";
import { expect, test } from "vitest";

const open = { fromClosed: false, toClosed: false };
const written = (found: Interval | undefined) => found && formatInterval(found);

test.each([
  [interval(1, 3), interval(2, 4), "[2, 3]"],
  [interval(1, 3, open), interval(2, 4, open), "(2, 3)"],
  [interval(1, 4), interval(2, 3, open), "(2, 3)"],
  [interval(1, 3), interval(1, 3, { toClosed: false }), "[1, 3)"],
  [interval(1, 2), interval(2, 3), "[2, 2]"],
  [interval(1, 2, { toClosed: false }), interval(2, 3), undefined],
  [interval(1, 2), interval(2, 3, { fromClosed: false }), undefined],
  [interval(1, 2), interval(3, 4), undefined],
  [atLeast(2), atMost(5), "[2, 5]"],
  [atLeast(2), atMost(2), "[2, 2]"],
  [everything, interval(1, 2, open), "(1, 2)"],
  [point(2), interval(1, 3), "[2, 2]"],
  [point(3), interval(1, 3, open), undefined],
])("%o with %o: %s", (a, b, expected) => {
  expect(written(intersect(a, b))).toBe(expected);
  expect(written(intersect(b, a))).toBe(expected);
});
