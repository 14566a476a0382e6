import { atLeast, atMost, contact, everything, interval, point } from "@tapewise/intervals";
import { expect, test } from "vitest";

const withoutEnd = { toClosed: false };
const withoutStart = { fromClosed: false };

test.each([
  [interval(1, 2), interval(3, 4), "apart"],
  [interval(1, 2, withoutEnd), interval(2, 3, withoutStart), "split-by-point"],
  [interval(1, 2, withoutEnd), interval(2, 3), "adjacent"],
  [interval(1, 2), interval(2, 3, withoutStart), "adjacent"],
  [interval(1, 2), interval(2, 3), "shared-end"],
  [atMost(2), atLeast(2), "shared-end"],
  [interval(1, 3), interval(2, 4), "overlapping"],
  [interval(1, 4), interval(2, 3), "overlapping"],
  [interval(1, 2), interval(1, 2), "overlapping"],
  [everything, everything, "overlapping"],
] as const)("%o and %o: %s", (a, b, expected) => {
  expect(contact(a, b)).toBe(expected);
  expect(contact(b, a)).toBe(expected);
});

test("a point is both of its own ends", () => {
  expect(contact(point(2), point(2))).toBe("shared-end");
  expect(contact(point(2), interval(2, 3))).toBe("shared-end");
  expect(contact(interval(1, 2), point(2))).toBe("shared-end");
  expect(contact(point(2), interval(1, 3))).toBe("overlapping");
  expect(contact(point(2), interval(2, 3, withoutStart))).toBe("adjacent");
  expect(contact(point(2), point(3))).toBe("apart");
});
