import {
  minimalDetectableChange,
  repeatabilityCoefficient,
  standardErrorOfMeasurement,
} from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

describe("standardErrorOfMeasurement", () => {
  test("is all of the spread without reliability, and none of it with a perfect one", () => {
    expect(standardErrorOfMeasurement(30, 0)).toBe(30);
    expect(standardErrorOfMeasurement(30, 1)).toBe(0);
    expect(standardErrorOfMeasurement(30, 0.75)).toBe(15);
  });

  test("refuses what is no spread or no correlation", () => {
    expect(() => standardErrorOfMeasurement(-1, 0.5)).toThrow("sd");
    expect(() => standardErrorOfMeasurement(30, 1.1)).toThrow("reliability");
    expect(() => standardErrorOfMeasurement(30, Number.NaN)).toThrow("reliability");
  });
});

describe("minimalDetectableChange", () => {
  test("is 2.772 times the error for a person: 1.959964 × √2", () => {
    expect(minimalDetectableChange(1)).toBeCloseTo(1.959964 * Math.SQRT2, 6);
  });

  test("falls with the root of the group and of the readings", () => {
    expect(minimalDetectableChange(5, { groupSize: 4 })).toBeCloseTo(minimalDetectableChange(5) / 2, 13);
    expect(minimalDetectableChange(5, { readingsEach: 4 })).toBeCloseTo(minimalDetectableChange(5) / 2, 13);
  });

  test("is the repeatability coefficient with the exact normal point", () => {
    const table = [
      [430, 433],
      [446, 442],
    ];
    const { coefficient, withinSd } = repeatabilityCoefficient(table, { multiplier: 1.959963984540054 });
    expect(minimalDetectableChange(withinSd)).toBeCloseTo(coefficient.value, 12);
  });

  test("refuses arguments out of range", () => {
    expect(() => minimalDetectableChange(-1)).toThrow("error");
    expect(() => minimalDetectableChange(5, { groupSize: 0 })).toThrow("options.groupSize");
    expect(() => minimalDetectableChange(5, { readingsEach: 1.5 })).toThrow("options.readingsEach");
    expect(() => minimalDetectableChange(5, { confidence: 1 })).toThrow("options.confidence");
  });
});
