import { InvalidArgumentError } from "@tapewise/outcome";
import { owensT } from "@tapewise/population";
import { normalUpperTail } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

describe("owensT", () => {
  test("is an angle at h = 0: atan a over 2π", () => {
    expect(owensT(0, 1)).toBe(0.125);
    expect(owensT(0, 0.5)).toBeCloseTo(Math.atan(0.5) / (2 * Math.PI), 16);
    expect(owensT(0, Number.POSITIVE_INFINITY)).toBe(0.25);
    expect(owensT(0, Number.NEGATIVE_INFINITY)).toBe(-0.25);
  });

  test("is half a tail at a = ∞, and Q (1 − Q) / 2 at a = 1", () => {
    for (const h of [0.5, 2, 7]) {
      const tail = normalUpperTail(h);
      expect(owensT(h, Number.POSITIVE_INFINITY)).toBe(tail / 2);
      expect(owensT(h, 1) / ((tail * (1 - tail)) / 2)).toBeCloseTo(1, 13);
    }
  });

  test("vanishes at a = 0 and far out", () => {
    expect(owensT(3, 0)).toBe(0);
    expect(owensT(Number.POSITIVE_INFINITY, 2)).toBe(0);
    expect(owensT(1e300, 2)).toBe(0);
    expect(owensT(50, 0.5)).toBe(0);
  });

  test("is even in h and odd in a", () => {
    expect(owensT(-1.5, 0.7)).toBe(owensT(1.5, 0.7));
    expect(owensT(1.5, -0.7)).toBe(-owensT(1.5, 0.7));
  });

  test("refuses NaN", () => {
    expect(() => owensT(Number.NaN, 1)).toThrow(InvalidArgumentError);
    expect(() => owensT(1, Number.NaN)).toThrow(InvalidArgumentError);
  });
});
