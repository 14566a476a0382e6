import { readingsFor } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("readingsFor", () => {
  test.each([
    // 64 / (25 − 9) = 4
    [8, 3, 5, 4],
    // 64 / (24.99 − 9) just above 4
    [8, 3, 4.999, 5],
    // 36 / 36
    [6, 0, 6, 1],
    [6, 0, 100, 1],
    [0, 3, 3, 1],
    [0, 0, 1e-9, 1],
    // The same but for their last digits.
    [0, 5 * (1 + 1e-14), 5, 1],
    // 0.09 / 0.03 = 3, though 0.3² is more than 0.09 in binary fractions
    [0.3, 0.3, Math.sqrt(0.12), 3],
  ])(
    "with %f mm a reading and %f mm that lasts, %f mm takes %i",
    (perReadingMm, lastingMm, target, count) => {
      expect(readingsFor({ perReadingMm, lastingMm }, target)).toBe(count);
    },
  );

  test.each([
    [8, 6, 5],
    [8, 5, 5],
    [8, 5 * (1 - 1e-14), 5],
    [0, 5.001, 5],
    // 10³² readings could, but nobody can count them.
    [1e16, 0, 1],
  ])(
    "with %f mm a reading and %f mm that lasts, no number of readings brings %f mm",
    (perReadingMm, lastingMm, target) => {
      expect(readingsFor({ perReadingMm, lastingMm }, target)).toBeUndefined();
    },
  );

  test("does not care about the size of the unit", () => {
    for (const scale of [1e-200, 1e-9, 1e9, 1e200]) {
      expect(readingsFor({ perReadingMm: 8 * scale, lastingMm: 3 * scale }, 5 * scale)).toBe(4);
    }
  });

  test.each([
    [{ perReadingMm: 8, lastingMm: 3 }, 0, "targetMm"],
    [{ perReadingMm: 8, lastingMm: 3 }, -1, "targetMm"],
    [{ perReadingMm: 8, lastingMm: 3 }, Number.NaN, "targetMm"],
    [{ perReadingMm: 8, lastingMm: 3 }, Number.POSITIVE_INFINITY, "targetMm"],
    [{ perReadingMm: Number.NaN, lastingMm: 3 }, 5, "perReadingMm"],
    [{ perReadingMm: -8, lastingMm: 3 }, 5, "perReadingMm"],
    [{ perReadingMm: 8, lastingMm: Number.NaN }, 5, "lastingMm"],
    [{ perReadingMm: 8, lastingMm: Number.POSITIVE_INFINITY }, 5, "lastingMm"],
  ])("refuses %o with a target of %f", (estimate, target, argument) => {
    expect(() => readingsFor(estimate, target)).toThrow(InvalidArgumentError);
    expect(() => readingsFor(estimate, target)).toThrow(`${argument} must be`);
  });
});
