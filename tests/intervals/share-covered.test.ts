import { atLeast, atMost, everything, interval, point, shareCovered, union } from "@tapewise/intervals";
import { describe, expect, test } from "vitest";

describe("of an interval with two bounds", () => {
  test.each([
    [interval(0, 4), interval(1, 2), 0.25],
    [interval(0, 4), interval(3, 9), 0.25],
    [interval(0, 4), everything, 1],
    [interval(0, 4), atLeast(4), 0],
    [interval(0, 4), point(2), 0],
    [interval(0, 4), interval(0, 4, { fromClosed: false, toClosed: false }), 1],
  ])("%o by %o: %d", (a, by, expected) => {
    expect(shareCovered(a, by)).toBe(expected);
  });

  test("by several intervals counts a twice covered stretch once", () => {
    expect(shareCovered(interval(0, 8), union(interval(1, 3), interval(2, 4), interval(7, 10)))).toBe(0.5);
    expect(shareCovered(interval(0, 8), union())).toBe(0);
  });

  // 0.9 - 0.3 is rounded up in binary, so the two lengths add up to a hair more than 0.9.
  test("never passes 1, however lengths are rounded", () => {
    expect((0.3 + (0.9 - 0.3)) / 0.9).toBeGreaterThan(1);
    const allButOnePoint = union(
      interval(0, 0.3, { toClosed: false }),
      interval(0.3, 0.9, { fromClosed: false }),
    );
    expect(allButOnePoint).toHaveLength(2);
    expect(shareCovered(interval(0, 0.9), allButOnePoint)).toBe(1);
  });

  test("stays a number at both ends of what numbers can hold", () => {
    const widest = interval(-Number.MAX_VALUE, Number.MAX_VALUE);
    expect(shareCovered(widest, atLeast(0))).toBe(0.5);
    const narrowest = interval(0, Number.MIN_VALUE);
    expect(shareCovered(narrowest, everything)).toBe(1);
  });
});

test("a point is covered or not", () => {
  expect(shareCovered(point(2), interval(1, 2))).toBe(1);
  expect(shareCovered(point(2), interval(1, 2, { toClosed: false }))).toBe(0);
  expect(shareCovered(point(2), union())).toBe(0);
});

// By hand: the limit of covered length / length within [-r, r] as r grows.
describe("of an interval without a bound", () => {
  test.each([
    ["(r - 9) / r", atLeast(0), atLeast(9), 1],
    ["9 / r", atLeast(0), interval(0, 9), 0],
    ["0 / r", atLeast(0), atMost(-1), 0],
    ["9 / r", atMost(0), atLeast(-9), 0],
    ["(r - 9) / r", atMost(0), atMost(-9), 1],
    ["(r - 9) / 2r", everything, atLeast(9), 0.5],
    ["(r + 9) / 2r", everything, atMost(9), 0.5],
    ["2r / 2r", everything, everything, 1],
    ["9 / 2r", everything, interval(0, 9), 0],
  ])("%s: %o by %o: %d", (_, a, by, expected) => {
    expect(shareCovered(a, by)).toBe(expected);
  });

  test("by a union that goes on in both directions", () => {
    expect(shareCovered(everything, union(atMost(0), atLeast(100)))).toBe(1);
    expect(shareCovered(everything, union())).toBe(0);
  });
});
