import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { normalJoint, withLognormal } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const about = { label: "a crew", source: "invented", caveat: "" };
const normal = normalJoint({
  about,
  variables: ["stature", "waist-girth", "hip-girth"],
  mean: [1700, 850, 1000],
  covariance: [
    [3600, 1200, 900],
    [1200, 7225, 4250],
    [900, 4250, 5000],
  ],
});
const skewed = withLognormal(normal, ["waist-girth", "hip-girth"]);

describe("withLognormal", () => {
  test("keeps means and covariances", () => {
    skewed.mean.forEach((value, i) => {
      expect(value).toBeCloseTo(normal.mean[i] ?? 0, 9);
    });
    skewed.covariance.flat().forEach((value, k) => {
      expect(value).toBeCloseTo(normal.covariance.flat()[k] ?? 0, 8);
    });
    expect([skewed.kind, skewed.logged]).toEqual(["lognormal", ["waist-girth", "hip-girth"]]);
  });

  test("makes the named variables lognormal, the others stay", () => {
    // Variation 0.1: σ² = ln 1.01.
    const waist = skewed.distribution("waist-girth");
    expect(waist.family).toBe("lognormal");
    expect(waist.parameters.sdLog).toBeCloseTo(Math.sqrt(Math.log(1.01)), 12);
    expect(waist.mean).toBeCloseTo(850, 9);
    expect(waist.sd).toBeCloseTo(85, 9);
    expect(skewed.distribution("stature").parameters).toEqual({ mean: 1700, sd: 60 });
  });

  test("conditions on the logarithm", () => {
    // Between ln waist and stature: covariance 1200/850, variance ln 1.01.
    const log = Math.log(1.01);
    const slope = 1200 / 850 / log;
    const meanLog = Math.log(850) - log / 2;
    const given = skewed.conditional({ "waist-girth": millimetres(1000) });
    expect(given.mean[0]).toBeCloseTo(1700 + slope * (Math.log(1000) - meanLog), 8);
    expect(given.covariance[0]?.[0]).toBeCloseTo(3600 - slope * (1200 / 850), 8);
    expect(given.logged).toEqual(["hip-girth"]);
    expect(given.about.label).toBe("a crew, waist girth 1000 mm");
    expect(skewed.conditional({ stature: millimetres(1700) }).logged).toEqual(["waist-girth", "hip-girth"]);
  });

  test("finds shares and densities in mm", () => {
    const waist = skewed.distribution("waist-girth");
    const { probability } = skewed.boxProbability({ "waist-girth": interval(700, 900) });
    expect(probability).toBeCloseTo(waist.cumulative(900) - waist.cumulative(700), 14);
    expect(skewed.boxProbability({ "waist-girth": interval(-50, 900) }).probability).toBeCloseTo(
      waist.cumulative(900),
      14,
    );
    expect(skewed.boxProbability({ "waist-girth": interval(-50, -10) }).probability).toBe(0);
    expect(skewed.logDensity({ "waist-girth": millimetres(870) })).toBeCloseTo(
      Math.log(waist.density(870)),
      12,
    );
    expect(skewed.logDensity({ "waist-girth": millimetres(-1) })).toBe(Number.NEGATIVE_INFINITY);
  });

  test("draws girths above 0, the same from the same stream", () => {
    const random = createRandom(6);
    const girths = Array.from({ length: 5000 }, () => skewed.sample(random)[1] ?? 0);
    expect(Math.min(...girths)).toBeGreaterThan(0);
    const mean = girths.reduce((sum, each) => sum + each, 0) / 5000;
    expect(Math.abs(mean - 850)).toBeLessThan((4 * 85) / Math.sqrt(5000));
    expect(skewed.sample(createRandom(1))).toEqual(skewed.sample(createRandom(1)));
  });

  test("has margins of both kinds", () => {
    expect(skewed.marginal(["hip-girth", "stature"]).logged).toEqual(["hip-girth"]);
    expect(skewed.marginal(["stature"]).distribution("stature").family).toBe("normal");
  });

  test("refuses variables that it does not have, means not above 0, and covariances that no such model has", () => {
    expect(() => withLognormal(normal, ["chest-girth"])).toThrow(InvalidArgumentError);
    expect(() => withLognormal(normal, [])).toThrow(InvalidArgumentError);
    const two = (mean: number[], covariance: number[][]) =>
      normalJoint({ about, variables: ["waist-girth", "hip-girth"], mean, covariance });
    const below = two(
      [-1, 1],
      [
        [1, 0],
        [0, 1],
      ],
    );
    expect(() => withLognormal(below, ["waist-girth"])).toThrow(InvalidArgumentError);
    const impossible = two(
      [1, 1],
      [
        [4, -3],
        [-3, 4],
      ],
    );
    expect(() => withLognormal(impossible, ["waist-girth", "hip-girth"])).toThrow(InvalidArgumentError);
    expect(() => skewed.conditional({ "waist-girth": millimetres(-5) })).toThrow(InvalidArgumentError);
  });
});
