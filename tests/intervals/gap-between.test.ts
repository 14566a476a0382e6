import {
  atLeast,
  atMost,
  everything,
  formatInterval,
  gapBetween,
  type Interval,
  interval,
  point,
} from "@tapewise/intervals";
import { expect, test } from "vitest";

const written = (found: Interval | undefined) => found && formatInterval(found);
const withoutEnd = { toClosed: false };
const withoutStart = { fromClosed: false };

test.each([
  [interval(1, 2), interval(3, 4), "(2, 3)"],
  [interval(1, 2, withoutEnd), interval(3, 4), "[2, 3)"],
  [interval(1, 2), interval(3, 4, withoutStart), "(2, 3]"],
  [interval(1, 2, withoutEnd), interval(2, 3, withoutStart), "[2, 2]"],
  [interval(1, 2, withoutEnd), interval(2, 3), undefined],
  [interval(1, 2), interval(2, 3, withoutStart), undefined],
  [interval(1, 2), interval(2, 3), undefined],
  [interval(1, 3), interval(2, 4), undefined],
  [interval(1, 6), interval(2, 4), undefined],
  [atMost(1), atLeast(2), "(1, 2)"],
  [atMost(1), point(2), "(1, 2)"],
  [everything, point(2), undefined],
])("%o and %o: %s", (a, b, expected) => {
  expect(written(gapBetween(a, b))).toBe(expected);
  expect(written(gapBetween(b, a))).toBe(expected);
});
