import { InvalidArgumentError } from "@tapewise/outcome";
import { readSurvey, safeSurveyNormal, safeSurveyPeople } from "@tapewise/population";
import { describe, expect, test } from "vitest";

const about = { label: "the crew", source: "the spring meeting", caveat: "four people" };
const dimensions = {
  "waist-girth": { column: "waist", unit: "mm" },
  "hip-girth": { column: "hip", unit: "mm" },
} as const;
const survey = readSurvey("waist,hip,w\n820,980,1\n,1010,1\n900,1040,1\n860,1020,1\n840,960,1\n", {
  about,
  dimensions,
});

describe("safeSurveyPeople", () => {
  test("takes whoever has all wanted values, and says how many have not", () => {
    const outcome = safeSurveyPeople(survey, ["waist-girth", "hip-girth"]);
    expect(outcome.ok && outcome.value.people).toEqual([
      [820, 980],
      [900, 1040],
      [860, 1020],
      [840, 960],
    ]);
    expect(outcome.issues.map(({ code, facts }) => [code, facts.count])).toEqual([
      ["survey-people-incomplete", 1],
    ]);
    expect(outcome.ok && outcome.value.about).toEqual(about);
    expect(safeSurveyPeople(survey, ["hip-girth"]).issues).toEqual([]);
  });

  test("fails when nobody has them all", () => {
    const nobody = readSurvey("waist,hip\n820,\n,1000\n", { about, dimensions });
    const outcome = safeSurveyPeople(nobody);
    expect(outcome.ok).toBe(false);
    expect(outcome.issues[0]?.code).toBe("survey-too-few-people");
    expect(() => safeSurveyPeople(survey, ["stature"])).toThrow(InvalidArgumentError);
  });
});

describe("safeSurveyNormal", () => {
  test("has means and covariances on n − 1", () => {
    // Waist 855: −35, 45, 5, −15; hip 1000: −20, 40, 20, −40.
    const outcome = safeSurveyNormal(survey, ["waist-girth", "hip-girth"]);
    if (!outcome.ok) throw new Error("no model");
    expect(outcome.value.mean).toEqual([855, 1000]);
    expect(outcome.value.covariance[0]?.[0]).toBeCloseTo((1225 + 2025 + 25 + 225) / 3, 9);
    expect(outcome.value.covariance[0]?.[1]).toBeCloseTo((700 + 1800 + 100 + 600) / 3, 9);
  });

  test("weighs people, with the effective number for n", () => {
    const weighted = readSurvey("waist,w\n800,1\n860,1\n900,2\n", {
      about,
      dimensions: { "waist-girth": dimensions["waist-girth"] },
      weight: "w",
    });
    const outcome = safeSurveyNormal(weighted);
    // Mean 865; variance (65² + 5² + 2·35²)/4 = 1675; effective 16/6.
    expect(outcome.ok && outcome.value.mean[0]).toBeCloseTo(865, 9);
    const effective = 16 / 6;
    expect(outcome.ok && outcome.value.covariance[0]?.[0]).toBeCloseTo(
      (1675 * effective) / (effective - 1),
      8,
    );
  });

  test("fails for too few people and for people who are all alike", () => {
    const few = readSurvey("waist,hip\n820,980\n840,1000\n860,1010\n", { about, dimensions });
    const outcome = safeSurveyNormal(few);
    expect(outcome.ok).toBe(false);
    expect(outcome.issues[0]?.message).toBe("3 people have every value that is needed, which is too few");
    const alike = readSurvey("waist,hip\n820,980\n820,1000\n820,1010\n820,1030\n", { about, dimensions });
    expect(safeSurveyNormal(alike).issues[0]?.message).toBe("waist-girth is the same for everybody");
  });
});
