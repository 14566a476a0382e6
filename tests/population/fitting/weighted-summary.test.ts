import { InvalidArgumentError } from "@tapewise/outcome";
import { weightedSummary } from "@tapewise/population";
import { describe, expect, test } from "vitest";

describe("weightedSummary", () => {
  test("with equal weights is the plain one", () => {
    // Mean 410; squares 100 + 0 + 100 on 2.
    const summary = weightedSummary([400, 410, 420], [5, 5, 5]);
    expect(summary).toEqual({
      people: 3,
      effectivePeople: 3,
      mean: 410,
      standardError: expect.closeTo(10 / Math.sqrt(3), 12),
      sd: expect.closeTo(10, 12),
      min: 400,
      max: 420,
    });
  });

  test("counts weights", () => {
    const summary = weightedSummary([400, 420, 1000], [3, 1, 0]);
    expect([summary.people, summary.mean, summary.effectivePeople, summary.max]).toEqual([2, 405, 1.6, 420]);
    // √(2/1 · (3·5)² + (1·15)²) / 4
    expect(summary.standardError).toBeCloseTo(Math.sqrt(2 * (225 + 225)) / 4, 12);
    // Variance (3·25 + 225)/4 = 75, times 1.6/0.6.
    expect(summary.sd).toBeCloseTo(Math.sqrt((75 * 1.6) / 0.6), 12);
  });

  test("of one person has no spread", () => {
    expect(weightedSummary([400], [2])).toEqual({
      people: 1,
      effectivePeople: 1,
      mean: 400,
      min: 400,
      max: 400,
    });
  });

  test("refuses samples and weights that are none", () => {
    expect(() => weightedSummary([], [])).toThrow(InvalidArgumentError);
    expect(() => weightedSummary([1, 2], [1])).toThrow(InvalidArgumentError);
    expect(() => weightedSummary([1, Number.POSITIVE_INFINITY], [1, 1])).toThrow(InvalidArgumentError);
  });
});
