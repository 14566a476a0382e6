import { describeInput, type InputDistribution } from "@tapewise/measurement";
import { createRandom, studentTCdf } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { drawerOf } from "../../../packages/measurement/src/uncertainty/draw-input.ts";

const DRAWS = 20_000;

function drawsOf(distribution: InputDistribution): readonly number[] {
  const draw = drawerOf(distribution, createRandom(1).fork(distribution.shape));
  return Array.from({ length: DRAWS }, draw);
}

describe("draws have the mean and the spread of their distribution", () => {
  test.each<[InputDistribution, number]>([
    // Beside each: an upper bound of the kurtosis, which says how well a variance is known.
    [{ shape: "normal", mean: 430, sd: 3 }, 3],
    [{ shape: "rectangular", lower: 424, upper: 436 }, 1.8],
    [{ shape: "triangular", lower: 424, upper: 436 }, 2.4],
    [{ shape: "trapezoidal", lower: 424, upper: 436, topShare: 0.5 }, 2.4],
    [{ shape: "curvilinear-trapezoid", lower: 424, upper: 436, inexactness: 3 }, 2.4],
    [{ shape: "arcsine", lower: 424, upper: 436 }, 1.5],
  ])("%o", (distribution, kurtosis) => {
    const { mean, uncertainty } = describeInput(distribution);
    const draws = drawsOf(distribution);
    const found = draws.reduce((sum, draw) => sum + draw, 0) / DRAWS;
    expect(Math.abs(found - mean)).toBeLessThan((4 * uncertainty) / Math.sqrt(DRAWS));
    const variance = draws.reduce((sum, draw) => sum + (draw - mean) ** 2, 0) / DRAWS;
    const allowed = 4 * Math.sqrt((kurtosis - 1) / DRAWS);
    expect(Math.abs(variance / uncertainty ** 2 - 1)).toBeLessThan(allowed);
    if ("lower" in distribution) {
      const slack = distribution.shape === "curvilinear-trapezoid" ? distribution.inexactness : 0;
      expect(Math.min(...draws)).toBeGreaterThanOrEqual(distribution.lower - slack);
      expect(Math.max(...draws)).toBeLessThanOrEqual(distribution.upper + slack);
    }
  });

  test.each([3, 4.5, 30, Number.POSITIVE_INFINITY])("Student's t with %f degrees of freedom", (df) => {
    const draws = drawsOf({ shape: "student-t", mean: 10, scale: 2, degreesOfFreedom: df });
    for (const t of [-3, -1, 0, 0.5, 2]) {
      const share = draws.filter((draw) => draw <= 10 + 2 * t).length / DRAWS;
      const exact = studentTCdf(t, df);
      expect(Math.abs(share - exact)).toBeLessThan(4 * Math.sqrt((exact * (1 - exact)) / DRAWS));
    }
  });
});
