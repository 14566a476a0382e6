import { InvalidArgumentError } from "@tapewise/outcome";
import { type QuantileType, sampleQuantile } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const sample = [15, 20, 35, 40, 50];

describe("the share 0.4 of five values, by the formulas", () => {
  // Positions np = 2 for 1, 2 and 4; np − ½ = 1.5 for 3; np + ½ = 2.5; (n + 1)p = 2.4; (n − 1)p + 1 = 2.6;
  // (n + ⅓)p + ⅓ = 2.4667; (n + ¼)p + ⅜ = 2.475.
  test.each<[QuantileType, number]>([
    [1, 20],
    [2, 27.5],
    [3, 20],
    [4, 20],
    [5, 27.5],
    [6, 26],
    [7, 29],
    [8, 27],
    [9, 27.125],
  ])("type %d gives %d", (type, value) => {
    expect(sampleQuantile(sample, 0.4, type)).toBeCloseTo(value, 12);
  });
});

test("a whole position that rounding lifts a little is still whole", () => {
  // 0.07 × 100 is 7.000000000000001 in doubles; the seventh of 1 to 100 is 7.
  const hundred = Array.from({ length: 100 }, (_, i) => i + 1);
  expect(0.07 * 100).not.toBe(7);
  expect(sampleQuantile(hundred, 0.07, 1)).toBe(7);
  expect(sampleQuantile(hundred, 0.07, 2)).toBe(7.5);
  expect(sampleQuantile(hundred, 0.07, 4)).toBe(7);
});

test("type 3 goes to the even neighbour", () => {
  // np − ½ is 1 for p = 0.375 and 2 for p = 0.625: both half way between two values, and 2 is even.
  expect(sampleQuantile([1, 2, 3, 4], 0.375, 3)).toBe(2);
  expect(sampleQuantile([1, 2, 3, 4], 0.625, 3)).toBe(2);
});

test("one value is every quantile of itself", () => {
  for (const type of [1, 2, 3, 4, 5, 6, 7, 8, 9] as const) {
    for (const p of [0, 0.3, 1]) expect(sampleQuantile([7], p, type)).toBe(7);
  }
});

test("values need not be sorted and are left as they were", () => {
  const shuffled = Object.freeze([50, 15, 40, 20, 35]);
  expect(sampleQuantile(shuffled, 0.5, 7)).toBe(35);
  expect(shuffled).toEqual([50, 15, 40, 20, 35]);
});

test("numbers are sorted as numbers", () => {
  expect(sampleQuantile([100, 9, -1], 0.5, 7)).toBe(9);
});

test("what makes no sense is refused", () => {
  expect(() => sampleQuantile([], 0.5, 7)).toThrow(
    new InvalidArgumentError("values", [], "at least one number"),
  );
  expect(() => sampleQuantile([1, Number.NaN], 0.5, 7)).toThrow(InvalidArgumentError);
  expect(() => sampleQuantile([1], 1.01, 7)).toThrow(
    new InvalidArgumentError("p", 1.01, "a probability from 0 to 1"),
  );
  for (const type of [0, 10, 7.5, Number.NaN]) {
    expect(() => sampleQuantile([1], 0.5, type as QuantileType)).toThrow(
      new InvalidArgumentError("type", type, "a whole number from 1 to 9"),
    );
  }
});
