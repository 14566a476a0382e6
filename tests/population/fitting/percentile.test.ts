import { InvalidArgumentError } from "@tapewise/outcome";
import { samplePercentile } from "@tapewise/population";
import type { QuantileType } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";

const five = [15, 20, 35, 40, 50];

describe("samplePercentile", () => {
  // Hyndman & Fan (1996) by hand for n = 5, p = 0.4: np = 2; h = 2, 2, 2 (even), 2, 2.5, 2.4, 2.6, 2.4667, 2.475.
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
  ])("of type %d", (type, expected) => {
    expect(samplePercentile(five, 0.4, type)).toBeCloseTo(expected, 12);
    if (type !== 3) expect(samplePercentile(five, 0.4, type, [2, 2, 2, 2, 2])).toBeCloseTo(expected, 12);
  });

  test("goes by shares where people have weights", () => {
    expect(samplePercentile([400, 410, 420], 0.5, 1, [1, 1, 3])).toBe(420);
    expect(samplePercentile([400, 410, 420], 0.4, 1, [1, 1, 3])).toBe(410);
    expect(samplePercentile([400, 410, 420], 0.4, 2, [1, 1, 3])).toBe(415);
    expect(samplePercentile([400, 410, 420], 0.41, 2, [1, 1, 3])).toBe(420);
    expect(samplePercentile([400, 410], 0, 2, [1, 1])).toBe(400);
    expect(samplePercentile([400, 410], 1, 1, [1, 1])).toBe(410);
    expect(samplePercentile([400, 999, 410], 1, 1, [1, 0, 1])).toBe(410);
  });

  test("spreads each person over the own share for types 4 to 9", () => {
    // Effective number 16/10 = 1.6; type 7: rank 1 + 0.5·0.6 = 1.3, window from 0.3/1.6 to 1.3/1.6. The person of
    // weight 3 holds the shares up to 0.75, which is 0.9 of the window.
    expect(samplePercentile([400, 420], 0.5, 7, [3, 1])).toBeCloseTo(0.9 * 400 + 0.1 * 420, 12);
    expect(samplePercentile([400, 420], 0, 7, [3, 1])).toBeCloseTo(400, 12);
  });

  test("refuses what it has no meaning for", () => {
    expect(() => samplePercentile(five, 0.5, 3, [1, 1, 1, 1, 1])).toThrow(InvalidArgumentError);
    expect(() => samplePercentile(five, 1.5, 7)).toThrow(InvalidArgumentError);
    expect(() => samplePercentile([], 0.5, 7)).toThrow(InvalidArgumentError);
    expect(() => samplePercentile(five, 0.5, 7, [1])).toThrow(InvalidArgumentError);
    // @ts-expect-error: there are nine types
    expect(() => samplePercentile(five, 0.5, 10, [1, 1, 1, 1, 1])).toThrow(InvalidArgumentError);
  });
});
