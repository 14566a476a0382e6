import { blandAltman } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const first = [431, 446, 412, 455];
const second = [428, 447, 408, 453];

describe("blandAltman", () => {
  test("by hand", () => {
    // Differences 3, −1, 4, 2: mean 2, squares about it 1 + 9 + 4 + 0 = 14.
    const { pairs, bias, differenceSd, lowerLimit, upperLimit, points } = blandAltman(first, second);
    expect([pairs, bias.value]).toEqual([4, 2]);
    expect(differenceSd).toBeCloseTo(Math.sqrt(14 / 3), 14);
    expect(lowerLimit.value).toBeCloseTo(2 - 1.96 * Math.sqrt(14 / 3), 13);
    expect(upperLimit.value).toBeCloseTo(2 + 1.96 * Math.sqrt(14 / 3), 13);
    expect(points[1]).toEqual({ mean: 446.5, difference: -1 });
  });

  test("exact intervals of limits reach further outwards, approximate ones alike", () => {
    const exact = blandAltman(first, second).upperLimit;
    expect(exact.upper - exact.value).toBeGreaterThan(2 * (exact.value - exact.lower));
    for (const method of ["approximate-1986", "approximate-1999"] as const) {
      const { value, lower, upper } = blandAltman(first, second, { method }).upperLimit;
      expect(upper - value).toBeCloseTo(value - lower, 12);
    }
  });

  test("a difference that grows with the size has a slope", () => {
    const sizes = [400, 420, 440, 460, 480];
    const stretched = sizes.map((size, i) => 1.02 * size + (i % 2 === 0 ? 0.1 : -0.1));
    const { slope } = blandAltman(stretched, sizes);
    // Difference 0.02 x over mean 1.01 x.
    expect(slope?.value).toBeCloseTo(0.02 / 1.01, 3);
    expect(slope?.pValue).toBeLessThan(0.01);
    expect(slope?.lower).toBeGreaterThan(0);
  });

  test("pairs of the same mean have no slope", () => {
    expect(blandAltman([431, 433, 430], [429, 427, 430]).slope).toBeUndefined();
  });

  test("refuses lists that are no pairs, differences that are all the same, conventions unheard of", () => {
    expect(() => blandAltman([1, 2], [1, 2])).toThrow("first");
    expect(() => blandAltman([1, 2, 3], [1, 2])).toThrow("as many as the first");
    expect(() => blandAltman([1, 2, Number.NaN], [1, 2, 3])).toThrow("first[2]");
    expect(() => blandAltman([1, 2, 3], [2, 3, 4])).toThrow("not all the same");
    expect(() => blandAltman(first, second, { multiplier: 0 })).toThrow("options.multiplier");
    expect(() => blandAltman(first, second, { confidence: 95 })).toThrow("options.confidence");
    // @ts-expect-error: no such method
    expect(() => blandAltman(first, second, { method: "bootstrap" })).toThrow(InvalidArgumentError);
  });
});
