import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { type NormalFigures, normalJoint } from "@tapewise/population";
import { createRandom, normalCdf } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const about = { label: "an invented crew", source: "invented", caveat: "" };
const figures: NormalFigures = {
  about,
  variables: ["stature", "torso-length", "waist-girth"],
  mean: [1700, 430, 850],
  covariance: [
    [3600, 750, 1200],
    [750, 625, 600],
    [1200, 600, 6400],
  ],
};
const crew = normalJoint(figures);

/** Torso length as the difference of two independent heights. */
const heights = normalJoint({
  about,
  variables: ["torso-length", "cervicale-height", "iliac-crest-height"],
  mean: [430, 1450, 1020],
  covariance: [
    [2500, 1600, -900],
    [1600, 1600, 0],
    [-900, 0, 900],
  ],
});

describe("normalJoint", () => {
  test("conditions on one variable by regression", () => {
    // Slopes 750/3600 and 1200/3600; covariances less 750·750/3600 and so on.
    const tall = crew.conditional({ stature: millimetres(1760) });
    expect(tall.variables).toEqual(["torso-length", "waist-girth"]);
    expect(tall.mean[0]).toBeCloseTo(442.5, 12);
    expect(tall.mean[1]).toBeCloseTo(870, 12);
    expect(tall.covariance[0]?.[0]).toBeCloseTo(625 - 156.25, 10);
    expect(tall.covariance[0]?.[1]).toBeCloseTo(600 - 250, 10);
    expect(tall.covariance[1]?.[1]).toBeCloseTo(6400 - 400, 10);
    expect(tall.about.label).toBe("an invented crew, stature 1760 mm");
    expect(tall.about.source).toBe("invented");
  });

  test("conditions on two variables", () => {
    // Σ₂₂ = [[3600, 1200], [1200, 6400]] has determinant 21,600,000; B = [750, 600] Σ₂₂⁻¹.
    const determinant = 3600 * 6400 - 1200 ** 2;
    const b1 = (750 * 6400 - 600 * 1200) / determinant;
    const b2 = (600 * 3600 - 750 * 1200) / determinant;
    const known = crew.conditional({ "waist-girth": millimetres(900), stature: millimetres(1650) });
    expect(known.mean[0]).toBeCloseTo(430 - 50 * b1 + 50 * b2, 10);
    expect(known.covariance[0]?.[0]).toBeCloseTo(625 - b1 * 750 - b2 * 600, 10);
  });

  test("gives one variable by itself, and some in the order asked for", () => {
    expect(crew.distribution("torso-length").parameters).toEqual({ mean: 430, sd: 25 });
    const two = crew.marginal(["waist-girth", "stature"]);
    expect(two.mean).toEqual([850, 1700]);
    expect(two.covariance).toEqual([
      [6400, 1200],
      [1200, 3600],
    ]);
  });

  test("finds shares within bounds of any of its variables", () => {
    const upTo = (to: number) => interval(Number.NEGATIVE_INFINITY, to);
    expect(crew.boxProbability({ "torso-length": upTo(455) }).probability).toBeCloseTo(normalCdf(1), 14);
    // Sheppard's quadrant: 1/4 + asin ρ / 2π, ρ = 750 / (60 · 25).
    const both = crew.boxProbability({ stature: upTo(1700), "torso-length": upTo(430) });
    expect(both.probability).toBeCloseTo(0.25 + Math.asin(0.5) / (2 * Math.PI), 14);
    expect(crew.boxProbability({}).probability).toBe(1);
    expect(crew.boxProbability({ stature: interval(1700, 1700) }).probability).toBe(0);
  });

  test("has the density of its variables, per mm and mm²", () => {
    // 1/(σ√2π) at the mean of one; 1/(2π √det) of two.
    expect(crew.logDensity({ "torso-length": millimetres(430) })).toBeCloseTo(
      -Math.log(25 * Math.sqrt(2 * Math.PI)),
      12,
    );
    const determinant = 3600 * 625 - 750 ** 2;
    expect(crew.logDensity({ stature: millimetres(1700), "torso-length": millimetres(430) })).toBeCloseTo(
      -Math.log(2 * Math.PI * Math.sqrt(determinant)),
      12,
    );
  });

  test("knows the third of three that make a difference", () => {
    const both = { "cervicale-height": millimetres(1460), "iliac-crest-height": millimetres(1000) };
    const torso = heights.conditional(both);
    expect(torso.mean[0]).toBeCloseTo(460, 9);
    expect(torso.covariance).toEqual([[0]]);
    expect(torso.distribution("torso-length").quantile(0.9)).toBeCloseTo(460, 9);
    expect(torso.boxProbability({ "torso-length": interval(450, 470) }).probability).toBe(1);
    expect(torso.boxProbability({ "torso-length": interval(400, 450) }).probability).toBe(0);
    const all = { ...both, "torso-length": millimetres(460) };
    expect(heights.logDensity(all)).toBeCloseTo(heights.logDensity(both), 9);
    expect(() => heights.logDensity({ ...both, "torso-length": millimetres(470) })).toThrow(
      InvalidArgumentError,
    );
  });

  test("draws people who keep such a difference, the same from the same stream", () => {
    const random = createRandom(4);
    for (let i = 0; i < 20; i += 1) {
      const [torso = 0, cervicale = 0, crest = 0] = heights.sample(random);
      expect(torso).toBeCloseTo(cervicale - crest, 8);
    }
    expect(heights.sample(createRandom(5))).toEqual(heights.sample(createRandom(5)));
  });

  test("draws people with its means and covariances", () => {
    const random = createRandom(21);
    const people = Array.from({ length: 20_000 }, () => crew.sample(random));
    const mean = [0, 1, 2].map((i) => people.reduce((sum, person) => sum + (person[i] ?? 0), 0) / 20_000);
    for (const [i, value] of mean.entries()) {
      const sd = Math.sqrt(figures.covariance[i]?.[i] ?? 0);
      expect(Math.abs(value - (figures.mean[i] ?? 0))).toBeLessThan((4 * sd) / Math.sqrt(20_000));
    }
    const shared = people.reduce((sum, [a = 0, b = 0]) => sum + (a - 1700) * (b - 430), 0) / 20_000;
    // Standard error of a covariance: √((σ₁²σ₂² + σ₁₂²)/n).
    expect(Math.abs(shared - 750)).toBeLessThan(4 * Math.sqrt((3600 * 625 + 750 ** 2) / 20_000));
  });

  test.each<[string, Partial<NormalFigures>]>([
    ["no variable", { variables: [], mean: [], covariance: [] }],
    ["a variable twice", { variables: ["stature", "stature", "waist-girth"] }],
    ["too few means", { mean: [1, 2] }],
    ["a mean that is no number", { mean: [1, 2, Number.NaN] }],
    [
      "rows of unequal length",
      {
        covariance: [
          [1, 0, 0],
          [0, 1],
          [0, 0, 1],
        ],
      },
    ],
    [
      "no symmetry",
      {
        covariance: [
          [1, 0.5, 0],
          [0, 1, 0],
          [0, 0, 1],
        ],
      },
    ],
    [
      "a negative variance",
      {
        covariance: [
          [-1, 0, 0],
          [0, 1, 0],
          [0, 0, 1],
        ],
      },
    ],
    [
      "correlations beyond 1",
      {
        covariance: [
          [1, 2, 0],
          [2, 1, 0],
          [0, 0, 1],
        ],
      },
    ],
    [
      "correlations that contradict each other",
      {
        covariance: [
          [1, 0.9, -0.9],
          [0.9, 1, 0.9],
          [-0.9, 0.9, 1],
        ],
      },
    ],
    ["no source", { about: { label: "x", source: "", caveat: "" } }],
  ])("refuses %s", (_, change) => {
    expect(() => normalJoint({ ...figures, ...change })).toThrow(InvalidArgumentError);
  });

  test("refuses what it does not know, and to be asked for nothing or everything", () => {
    expect(() => crew.distribution("hip-girth")).toThrow(InvalidArgumentError);
    expect(() => crew.marginal(["hip-girth"])).toThrow(InvalidArgumentError);
    expect(() => crew.conditional({})).toThrow(InvalidArgumentError);
    expect(() => crew.conditional({ "hip-girth": millimetres(1000) })).toThrow(InvalidArgumentError);
    const everything = {
      stature: millimetres(1700),
      "torso-length": millimetres(430),
      "waist-girth": millimetres(850),
    };
    expect(() => crew.conditional(everything)).toThrow(InvalidArgumentError);
    expect(() => crew.boxProbability({ "hip-girth": interval(900, 1000) })).toThrow(InvalidArgumentError);
    const reversed = { from: 2, to: 1, fromClosed: true, toClosed: true };
    expect(() => crew.boxProbability({ stature: reversed })).toThrow(InvalidArgumentError);
  });
});
