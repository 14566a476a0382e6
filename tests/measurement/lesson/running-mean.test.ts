import { runningMean } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

describe("runningMean", () => {
  test("follows the readings", () => {
    const points = runningMean([430, 440, 432, 434]);
    expect(points.map(({ count, meanMm, medianMm }) => [count, meanMm, medianMm])).toEqual([
      [1, 430, 430],
      [2, 435, 435],
      [3, 434, 432],
      [4, 434, 433],
    ]);
    // Deviations −4, 6, −2: 56/2
    expect(points[2]?.sdMm).toBeCloseTo(Math.sqrt(28), 12);
  });

  test("one reading has no band of its own", () => {
    const [first] = runningMean([430]);
    expect(first).toEqual({ count: 1, readingMm: 430, meanMm: 430, medianMm: 430 });
  });

  test("two readings: Student's t with one degree of freedom", () => {
    // At 50 % its quantile is 1, and s/√2 is half the difference: the band ends at the readings.
    const second = runningMean([430, 440], { probability: 0.5 })[1];
    expect([second?.lowerMm?.toFixed(9), second?.upperMm?.toFixed(9)]).toEqual([
      "430.000000000",
      "440.000000000",
    ]);
  });

  test("a stated spread gives the first reading a band too", () => {
    const points = runningMean([430, 430, 430, 430], { noiseMm: 8 });
    // 1.959964 · 8 and half of it
    expect(points[0]?.upperMm).toBeCloseTo(430 + 15.679711876320443, 10);
    expect(points[3]?.lowerMm).toBeCloseTo(430 - 7.8398559381602215, 10);
  });

  test("takes typed arrays", () => {
    expect(runningMean(Float64Array.of(1, 2))[1]?.meanMm).toBe(1.5);
  });

  test.each([
    [[], {}, "readingsMm"],
    [[1, Number.NaN], {}, "readingsMm[1]"],
    [[1], { probability: 1 }, "probability"],
    [[1], { noiseMm: -1 }, "noiseMm"],
  ])("refuses %j with %o", (readings, options, argument) => {
    expect(() => runningMean(readings, options)).toThrow(`${argument} must be`);
  });
});
