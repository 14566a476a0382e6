import { atLeast, atMost, everything, interval, point, relation } from "@tapewise/intervals";
import { expect, test } from "vitest";

test("does not look at whether ends belong", () => {
  const open = { fromClosed: false, toClosed: false };
  expect(relation(interval(1, 2), interval(2, 3))).toBe("meets");
  expect(relation(interval(1, 2, open), interval(2, 3, open))).toBe("meets");
  expect(relation(interval(1, 2, open), interval(1, 2))).toBe("equals");
});

test("takes a missing bound as the same place for all", () => {
  expect(relation(atMost(1), atMost(2))).toBe("starts");
  expect(relation(atLeast(2), atLeast(1))).toBe("finishes");
  expect(relation(everything, everything)).toBe("equals");
  expect(relation(everything, atLeast(1))).toBe("finished-by");
  expect(relation(interval(1, 2), everything)).toBe("during");
  expect(relation(atMost(1), atLeast(1))).toBe("meets");
  expect(relation(atMost(2), atLeast(1))).toBe("overlaps");
});

// The five relations of a point to an interval: Vilain, AAAI-82 (from memory).
test.each([
  [0, "before"],
  [1, "starts"],
  [2, "during"],
  [3, "finishes"],
  [4, "after"],
] as const)("the point %d is in the relation %s to [1, 3]", (x, expected) => {
  expect(relation(point(x), interval(1, 3))).toBe(expected);
});

test.each([
  [0, "after"],
  [1, "started-by"],
  [2, "contains"],
  [3, "finished-by"],
  [4, "before"],
] as const)("[1, 3] has the converse relation to the point %d: %s", (x, expected) => {
  expect(relation(interval(1, 3), point(x))).toBe(expected);
});

test("two points are before, equal or after", () => {
  expect(relation(point(1), point(2))).toBe("before");
  expect(relation(point(2), point(2))).toBe("equals");
  expect(relation(point(3), point(2))).toBe("after");
});
