import { InvalidArgumentError } from "@tapewise/outcome";
import {
  mixtureJoint,
  normalJoint,
  priorFrom,
  readSurvey,
  referencePopulation,
  referencePrior,
  safeSurveyPeople,
} from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const women = referencePopulation("women");

describe("priorFrom", () => {
  test("of the reference population and a stature is the light reference prior", () => {
    const light = referencePrior({ cut: "women", statureMm: millimetres(1710) });
    const prior = priorFrom(women, { stature: millimetres(1710) }, { dimensions: light.dimensions });
    expect(prior.dimensions).toEqual(light.dimensions);
    prior.meanMm.forEach((mean, i) => {
      expect(mean).toBeCloseTo(light.meanMm[i] ?? 0, 2);
    });
    // The light figures carry six digits of a correlation.
    prior.covarianceMm2.flat().forEach((covariance, k) => {
      expect(Math.abs(covariance - (light.covarianceMm2.flat()[k] ?? 0))).toBeLessThan(0.02);
    });
  });

  test("carries label, source and caveat", () => {
    const prior = priorFrom(women, { stature: millimetres(1710), "mass-kg": 64 });
    expect(prior.label).toBe("women, stature 1710 mm, body mass 64 kg");
    expect(prior.source).toContain("ANSUR II");
    expect(prior.caveat).toContain("Soldiers");
  });

  test("says when it is extrapolated, and what was added", () => {
    const tall = priorFrom(women, { stature: millimetres(1950) }, { dimensions: ["torso-length"] });
    expect(tall.caveat).toContain("The stature lies beyond nearly all who were measured: extrapolated.");
    const usual = priorFrom(women, { stature: millimetres(1650) }, { dimensions: ["torso-length"] });
    expect(usual.caveat).not.toContain("extrapolated");
    const options = { dimensions: ["torso-length"] as const, surplusMm: { "torso-length": 10 } };
    const curved = priorFrom(women, { stature: millimetres(1650) }, options);
    expect(curved.meanMm[0]).toBe((usual.meanMm[0] ?? 0) + 10);
    expect(curved.caveat).toContain("10 mm added to torso-length.");
    const wrong = { surplusMm: { "torso-length": Number.NaN } };
    expect(() => priorFrom(women, {}, wrong)).toThrow(InvalidArgumentError);
  });

  test("leaves out what the others determine, body mass, and what is known", () => {
    const prior = priorFrom(women, { stature: millimetres(1650) });
    // Torso length and cervicale height leave nothing open of the crest's height.
    expect(prior.dimensions).toContain("torso-length");
    expect(prior.dimensions).toContain("cervicale-height");
    expect(prior.dimensions).not.toContain("iliac-crest-height");
    expect(prior.dimensions).not.toContain("stature");
    expect(prior.dimensions).toHaveLength(11);
    expect(prior.covarianceMm2).toEqual(
      prior.covarianceMm2[0]?.map((_, j) => prior.covarianceMm2.map((row) => row[j])),
    );
  });

  test("of nothing known is the model itself", () => {
    const prior = priorFrom(women, {}, { dimensions: ["waist-girth"] });
    expect(prior.label).toBe("women");
    expect(prior.meanMm[0]).toBeCloseTo(861.4303, 4);
  });

  test("of a mixture takes mean and covariance given what is known", () => {
    const about = { label: "everybody", source: "invented", caveat: "" };
    const of = (mean: number) =>
      normalJoint({ about, variables: ["torso-length"], mean: [mean], covariance: [[400]] });
    const parts = [of(400), of(460)].map((model) => ({ weight: 1, model }));
    const prior = priorFrom(mixtureJoint({ about, parts }), {});
    expect(prior.meanMm).toEqual([430]);
    expect(prior.covarianceMm2).toEqual([[1300]]);
  });

  test("of an own survey", () => {
    const about = { label: "the crew", source: "the spring meeting", caveat: "four people" };
    const survey = readSurvey("torso,waist\n400,800\n410,790\n420,840\n430,850\n", {
      about,
      dimensions: {
        "torso-length": { column: "torso", unit: "mm" },
        "waist-girth": { column: "waist", unit: "mm" },
      },
    });
    const people = safeSurveyPeople(survey);
    if (!people.ok) throw new Error("no people");
    // Slope of torso on waist: Σ −15·−20 … = 1100 / 2600 over deviations −15, −5, 5, 15 and −20, −30, 20, 30.
    const prior = priorFrom(people.value, { "waist-girth": millimetres(846) });
    expect(prior.meanMm[0]).toBeCloseTo(415 + 26 * ((300 + 150 + 100 + 450) / 2600), 9);
    expect(prior.label).toBe("the crew, waist girth 846 mm");
  });

  test("refuses dimensions that are known, missing or determined", () => {
    const stature = { stature: millimetres(1700) };
    expect(() => priorFrom(women, stature, { dimensions: ["stature"] })).toThrow(InvalidArgumentError);
    expect(() => priorFrom(women, stature, { dimensions: ["hip-belt-girth"] })).toThrow(InvalidArgumentError);
    expect(() => priorFrom(women, { "hip-belt-girth": millimetres(900) })).toThrow(InvalidArgumentError);
    const heights = { "cervicale-height": millimetres(1400), "iliac-crest-height": millimetres(1000) };
    expect(() => priorFrom(women, heights, { dimensions: ["torso-length"] })).toThrow(InvalidArgumentError);
  });
});
