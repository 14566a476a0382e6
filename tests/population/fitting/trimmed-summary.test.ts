import { InvalidArgumentError } from "@tapewise/outcome";
import { trimmedSummary } from "@tapewise/population";
import { describe, expect, test } from "vitest";

describe("trimmedSummary", () => {
  test("leaves out both ends and winsorises for the error", () => {
    // Kept 402, 405, 409; winsorised 402, 402, 405, 409, 409: mean 405.4, squares 11.56·2 + 0.16 + 12.96·2.
    const summary = trimmedSummary([409, 398, 4090, 402, 405], 0.2);
    expect(summary.leftOutEach).toBe(1);
    expect(summary.mean).toBeCloseTo(1216 / 3, 12);
    expect(summary.standardError).toBeCloseTo(Math.sqrt(49.2 / 6), 12);
    expect(summary.people).toBe(5);
  });

  test("without trimming is mean and s/√n", () => {
    const summary = trimmedSummary([400, 410, 420], 0);
    expect(summary.mean).toBe(410);
    expect(summary.standardError).toBeCloseTo(10 / Math.sqrt(3), 12);
  });

  test("rounds the number to be left out down", () => {
    expect(trimmedSummary([1, 2, 3, 4, 5, 6, 7, 8, 9], 0.2).leftOutEach).toBe(1);
    // 0.3 · 10 is three people, whatever binary makes of it.
    expect(trimmedSummary([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.3).leftOutEach).toBe(3);
  });

  test("refuses to leave nothing", () => {
    expect(() => trimmedSummary([1, 2, 3], 0.5)).toThrow(InvalidArgumentError);
    expect(() => trimmedSummary([1, 2, 3], 0.4)).toThrow(InvalidArgumentError);
    expect(() => trimmedSummary([1, 2, 3], -0.1)).toThrow(InvalidArgumentError);
    expect(() => trimmedSummary([1], 0)).toThrow(InvalidArgumentError);
  });
});
