import { InvalidArgumentError } from "@tapewise/outcome";
import { normalDistribution, qqPoints } from "@tapewise/population";
import { describe, expect, test } from "vitest";

const torso = normalDistribution({ mean: 400, sd: 10 });

describe("qqPoints", () => {
  test("stands each person at the middle of the own share", () => {
    const points = qqPoints([411, 395, 400, 404], torso);
    expect(points.map(({ share }) => share)).toEqual([0.125, 0.375, 0.625, 0.875]);
    expect(points.map(({ observed }) => observed)).toEqual([395, 400, 404, 411]);
    expect(points[0]?.expected).toBe(torso.quantile(0.125));
  });

  test("gives weighted people wider shares", () => {
    const points = qqPoints([400, 420, 410], torso, [1, 1, 2]);
    expect(points.map(({ share }) => share)).toEqual([0.125, 0.5, 0.875]);
    expect(points.map(({ observed }) => observed)).toEqual([400, 410, 420]);
    expect(qqPoints([400, 420], torso, [1, 0])).toHaveLength(1);
  });

  test("lies on the line for the distribution's own quantiles", () => {
    const sample = Array.from({ length: 9 }, (_, i) => torso.quantile((i + 0.5) / 9));
    for (const { expected, observed } of qqPoints(sample, torso)) expect(observed).toBeCloseTo(expected, 9);
  });

  test("refuses no sample", () => {
    expect(() => qqPoints([], torso)).toThrow(InvalidArgumentError);
    expect(() => qqPoints([1], torso, [])).toThrow(InvalidArgumentError);
  });
});
