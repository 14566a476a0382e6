import { interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { mixtureJoint, normalJoint } from "@tapewise/population";
import { createRandom, normalPdf } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const about = { label: "everybody", source: "invented", caveat: "" };
const of = (stature: number, torso: number) =>
  normalJoint({
    about,
    variables: ["stature", "torso-length"],
    mean: [stature, torso],
    covariance: [
      [3600, 900],
      [900, 400],
    ],
  });
const short = of(1620, 400);
const tall = of(1740, 450);
const both = mixtureJoint({
  about,
  parts: [
    { weight: 2, model: short },
    { weight: 2, model: tall },
  ],
});

describe("mixtureJoint", () => {
  test("has the moments of the whole", () => {
    expect(both.mean).toEqual([1680, 425]);
    // Within plus between: 60², 60·25, 25².
    expect(both.covariance).toEqual([
      [3600 + 3600, 900 + 1500],
      [900 + 1500, 400 + 625],
    ]);
    expect(both.parts.map(({ weight }) => weight)).toEqual([0.5, 0.5]);
  });

  test("weighs its parts by Bayes when something is known", () => {
    const given = both.conditional({ stature: millimetres(1710) });
    const [a, b] = [normalPdf(90 / 60), normalPdf(30 / 60)];
    expect(given.parts[0]?.weight).toBeCloseTo(a / (a + b), 12);
    // Each part by its own regression of slope 1/4.
    expect(given.mean[0]).toBeCloseTo((a * 422.5 + b * 442.5) / (a + b), 10);
    expect(given.about.label).toBe("everybody, stature 1710 mm");
    expect(both.logDensity({ stature: millimetres(1710) })).toBeCloseTo(Math.log((a + b) / 120), 12);
  });

  test("is sure of the kind where only one can be", () => {
    const giant = both.conditional({ stature: millimetres(90_000) });
    expect(giant.parts.map(({ weight }) => weight)).toEqual([1]);
    expect(giant.mean[0]).toBeCloseTo(450 + 88_260 / 4, 9);
  });

  test("weighs shares, margins and people", () => {
    const box = { "torso-length": interval(400, 450) };
    const { probability } = both.boxProbability(box);
    expect(probability).toBeCloseTo(
      (short.boxProbability(box).probability + tall.boxProbability(box).probability) / 2,
      14,
    );
    expect(both.marginal(["torso-length"]).distribution("torso-length").mean).toBe(425);
    expect(both.distribution("stature").variance).toBe(7200);
    expect(both.sample(createRandom(8))).toEqual(both.sample(createRandom(8)));
    const random = createRandom(2);
    const statures = Array.from({ length: 4000 }, () => both.sample(random)[0] ?? 0);
    const mean = statures.reduce((sum, each) => sum + each, 0) / 4000;
    expect(Math.abs(mean - 1680)).toBeLessThan(4 * Math.sqrt(7200 / 4000));
  });

  test("refuses no parts, parts of different variables and weights that are none", () => {
    expect(() => mixtureJoint({ about, parts: [] })).toThrow(InvalidArgumentError);
    const parts = (weight: number) => [
      { weight, model: short },
      { weight: 0, model: tall.marginal(["torso-length", "stature"]) },
    ];
    expect(() => mixtureJoint({ about, parts: parts(1) })).toThrow(InvalidArgumentError);
    expect(() => mixtureJoint({ about, parts: [{ weight: 0, model: short }] })).toThrow(InvalidArgumentError);
    expect(() => mixtureJoint({ about, parts: [{ weight: -1, model: short }] })).toThrow(
      InvalidArgumentError,
    );
  });
});
