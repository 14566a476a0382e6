import { InvalidArgumentError } from "@tapewise/outcome";
import { empiricalJoint, normalJoint, referencePopulation, reweight } from "@tapewise/population";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const about = { label: "soldiers", source: "a survey", caveat: "Soldiers." };
const model = normalJoint({
  about,
  variables: ["stature", "torso-length"],
  mean: [1700, 430],
  covariance: [
    [3600, 750],
    [750, 625],
  ],
});
const target = (mean: number, variance: number) =>
  normalJoint({
    about: { label: "a public", source: "a register", caveat: "Self-reported." },
    variables: ["stature"],
    mean: [mean],
    covariance: [[variance]],
  });

describe("reweight", () => {
  test("keeps what is expected at each stature and spreads it over the new statures", () => {
    const changed = reweight(model, target(1680, 4900));
    const slope = 750 / 3600;
    expect(changed.mean).toEqual([1680, expect.closeTo(430 - 20 * slope, 10)]);
    expect(changed.covariance[0]?.[0]).toBeCloseTo(4900, 9);
    expect(changed.covariance[0]?.[1]).toBeCloseTo(4900 * slope, 9);
    // Residual 625 − 750²/3600, and slope² times the new variance.
    expect(changed.covariance[1]?.[1]).toBeCloseTo(625 - 750 * slope + slope ** 2 * 4900, 9);
    const [before, after] = [model, changed].map((each) => each.conditional({ stature: millimetres(1750) }));
    expect(after?.mean[0]).toBeCloseTo(before?.mean[0] ?? 0, 9);
    expect(after?.covariance[0]?.[0]).toBeCloseTo(before?.covariance[0]?.[0] ?? 0, 9);
  });

  test("says where it all comes from and what is assumed", () => {
    expect(reweight(model, target(1680, 4900)).about).toEqual({
      label: "soldiers, re-weighted to a public",
      source: "a survey; re-weighted to a register",
      caveat: "Soldiers. Assumption: people of the same stature are as in the first source. Self-reported.",
    });
  });

  test("takes stature and body mass of the reference population", () => {
    const invented = normalJoint({
      about: { label: "an invented public", source: "invented", caveat: "" },
      variables: ["mass-kg", "stature"],
      mean: [80, 1610],
      covariance: [
        [400, 350],
        [350, 4900],
      ],
    });
    const women = reweight(referencePopulation("women"), invented);
    expect(women.distribution("mass-kg").sd).toBeCloseTo(20, 9);
    expect(women.distribution("stature").mean).toBe(1610);
    // Heavier by 12 kg at a waist of 8 mm or so more per kg.
    const waist = women.distribution("waist-girth").mean;
    expect(waist).toBeGreaterThan(referencePopulation("women").distribution("waist-girth").mean + 60);
    // The heights still make the torso.
    const [torso, cervicale, crest] = (
      ["torso-length", "cervicale-height", "iliac-crest-height"] as const
    ).map((variable) => women.distribution(variable).mean);
    expect(torso).toBeCloseTo((cervicale ?? 0) - (crest ?? 0), 8);
  });

  test("weighs measured people by the ratio of the densities", () => {
    const random = createRandom(17);
    const people = Array.from({ length: 4000 }, () => [...model.sample(random)]);
    const survey = empiricalJoint({ about, variables: model.variables, people });
    const changed = reweight(survey, target(1690, 3000));
    expect(changed.kind).toBe("empirical");
    // Some people less in effect; mean and variance of statures as asked for, within sampling error.
    expect(changed.effectivePeople).toBeLessThan(survey.effectivePeople);
    expect(changed.effectivePeople).toBeGreaterThan(3000);
    expect(Math.abs((changed.mean[0] ?? 0) - 1690)).toBeLessThan(4 * Math.sqrt(3000 / 3000));
    expect(Math.abs((changed.covariance[0]?.[0] ?? 0) / 3000 - 1)).toBeLessThan(4 * Math.sqrt(2 / 3000));
    // And torsos follow by the regression.
    expect(Math.abs((changed.mean[1] ?? 0) - (430 - 10 * (750 / 3600)))).toBeLessThan(
      4 * Math.sqrt(600 / 3000),
    );
  });

  test("changes nothing where the target is what there was", () => {
    const same = reweight(model, target(1700, 3600));
    expect(same.mean).toEqual(model.mean);
    expect(same.covariance[1]?.[1]).toBeCloseTo(625, 10);
  });

  test("refuses targets that the model lacks or whose variables determine each other", () => {
    const girth = normalJoint({ about, variables: ["waist-girth"], mean: [800], covariance: [[100]] });
    expect(() => reweight(model, girth)).toThrow(InvalidArgumentError);
    const heights = referencePopulation("men").marginal([
      "torso-length",
      "cervicale-height",
      "iliac-crest-height",
    ]);
    expect(() => reweight(referencePopulation("men"), heights)).toThrow(InvalidArgumentError);
  });
});
