import { describeInput, type InputDistribution } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("describeInput", () => {
  test.each<[InputDistribution, number, number]>([
    [{ shape: "normal", mean: 430, sd: 3 }, 430, 3],
    // 6/√3
    [{ shape: "rectangular", lower: 424, upper: 436 }, 430, Math.sqrt(12)],
    // 6/√6
    [{ shape: "triangular", lower: 424, upper: 436 }, 430, Math.sqrt(6)],
    // 6/√2
    [{ shape: "arcsine", lower: 424, upper: 436 }, 430, Math.sqrt(18)],
    // 36 (1 + 1/4)/6
    [{ shape: "trapezoidal", lower: 424, upper: 436, topShare: 0.5 }, 430, Math.sqrt(7.5)],
    // 12²/12 + 3²/9
    [{ shape: "curvilinear-trapezoid", lower: 424, upper: 436, inexactness: 3 }, 430, Math.sqrt(13)],
    [{ shape: "rectangular", lower: 5, upper: 5 }, 5, 0],
  ])("%o", (distribution, mean, uncertainty) => {
    const found = describeInput(distribution);
    expect(found.mean).toBe(mean);
    expect(Math.abs(found.uncertainty - uncertainty)).toBeLessThan(1e-14);
    expect(found.degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  test("a trapezoid with no top is a triangle, with nothing but top a rectangle", () => {
    const bounds = { lower: -2, upper: 7 };
    const trapezoid = (topShare: number) =>
      describeInput({ shape: "trapezoidal", ...bounds, topShare }).uncertainty;
    expect(trapezoid(0)).toBeCloseTo(describeInput({ shape: "triangular", ...bounds }).uncertainty, 14);
    expect(trapezoid(1)).toBeCloseTo(describeInput({ shape: "rectangular", ...bounds }).uncertainty, 14);
  });

  test.each<[unknown, string]>([
    [{ shape: "normal", mean: Number.NaN, sd: 1 }, "distribution.mean"],
    [{ shape: "normal", mean: 0, sd: -1 }, "distribution.sd"],
    [{ shape: "student-t", mean: 0, scale: 1, degreesOfFreedom: 2 }, "distribution.degreesOfFreedom"],
    [
      { shape: "student-t", mean: 0, scale: Number.POSITIVE_INFINITY, degreesOfFreedom: 3 },
      "distribution.scale",
    ],
    [{ shape: "rectangular", lower: 1, upper: 0 }, "distribution.upper"],
    [{ shape: "triangular", lower: Number.NEGATIVE_INFINITY, upper: 0 }, "distribution.lower"],
    [{ shape: "trapezoidal", lower: 0, upper: 1, topShare: 1.1 }, "distribution.topShare"],
    [{ shape: "curvilinear-trapezoid", lower: 0, upper: 1, inexactness: 0.6 }, "distribution.inexactness"],
    [{ shape: "cauchy", lower: 0, upper: 1 }, "distribution.shape"],
  ])("refuses %j", (distribution, argument) => {
    const describeIt = () => describeInput(distribution as InputDistribution);
    expect(describeIt).toThrow(InvalidArgumentError);
    expect(describeIt).toThrow(`${argument} must be`);
  });
});
