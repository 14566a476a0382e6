import { InvalidArgumentError } from "@tapewise/outcome";
import { percentileInterval } from "@tapewise/population";
import { describe, expect, test } from "vitest";

const ten = [10, 1, 2, 3, 4, 5, 6, 7, 8, 9];

describe("percentileInterval", () => {
  test("of a median goes by the binomial distribution", () => {
    // P(2 ≤ B ≤ 8) for B of ten halves: 1 − 2·(1 + 10)/1024.
    const middle = percentileInterval(ten, 0.5, 0.95);
    expect([middle.lower, middle.upper]).toEqual([2, 9]);
    expect(middle.coverage).toBeCloseTo(1 - 22 / 1024, 12);
    // One rank further in misses 56/1024 on each side: more than 5 %.
    const ninety = percentileInterval(ten, 0.5, 0.89);
    expect([ninety.lower, ninety.upper]).toEqual([3, 8]);
    expect(ninety.coverage).toBeCloseTo(1 - 112 / 1024, 12);
  });

  test("leaves an end open that ten people cannot bound", () => {
    // 0.95¹⁰ = 0.599: the greatest of ten lies below the 95th percentile more often than not.
    const high = percentileInterval(ten, 0.95, 0.95);
    expect("upper" in high).toBe(false);
    expect(high.lower).toBe(8);
    // P(B ≥ 8) of ten at 0.95: 1 − P(B ≤ 7).
    const atLeastEight = [8, 9, 10].reduce((sum, k) => {
      const ways = [45, 10, 1][k - 8] ?? 0;
      return sum + ways * 0.95 ** k * 0.05 ** (10 - k);
    }, 0);
    expect(high.coverage).toBeCloseTo(atLeastEight, 12);
    expect("lower" in percentileInterval(ten, 0.05, 0.95)).toBe(false);
  });

  test("says nothing where there is nothing to say", () => {
    expect(percentileInterval([400], 0.5, 0.95)).toEqual({ coverage: 1 });
    expect(percentileInterval(ten, 0, 0.95)).toEqual({ upper: 1, coverage: 1 });
    expect(percentileInterval(ten, 1, 0.95)).toEqual({ lower: 10, coverage: 1 });
  });

  test("refuses what is no confidence", () => {
    expect(() => percentileInterval(ten, 0.5, 1)).toThrow(InvalidArgumentError);
    expect(() => percentileInterval(ten, 0.5, 0)).toThrow(InvalidArgumentError);
    expect(() => percentileInterval(ten, -0.5, 0.9)).toThrow(InvalidArgumentError);
    expect(() => percentileInterval([], 0.5, 0.9)).toThrow(InvalidArgumentError);
  });
});
