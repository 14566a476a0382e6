import { InvalidArgumentError } from "@tapewise/outcome";
import { normalJoint, questionGiven, referencePopulation } from "@tapewise/population";
import { normalUpperTail } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const crew = normalJoint({
  about: { label: "a crew", source: "invented", caveat: "" },
  variables: ["stature", "torso-length"],
  mean: [1700, 430],
  covariance: [
    [3600, 750],
    [750, 625],
  ],
});
const torso = (mm: number, uncertaintyMm = 0) => ({
  dimension: "torso-length" as const,
  mm: millimetres(mm),
  uncertaintyMm,
});

describe("questionGiven", () => {
  test("holds a reading against what the rest says", () => {
    // At 1760 mm: mean 442.5, variance 468.75; the reading's 6 mm added.
    const check = questionGiven(crew, { stature: millimetres(1760) }, torso(470, 6));
    expect(check.usualMm).toBeCloseTo(442.5, 10);
    expect(check.sdMm).toBeCloseTo(Math.sqrt(468.75 + 36), 10);
    expect(check.score).toBeCloseTo(27.5 / Math.sqrt(504.75), 10);
    expect(check.tailProbability).toBeCloseTo(2 * normalUpperTail(27.5 / Math.sqrt(504.75)), 12);
    expect(check.issues).toEqual([]);
  });

  test("questions what is usual by itself and unlikely given the rest", () => {
    const alone = questionGiven(crew, {}, torso(480));
    expect(alone.issues).toEqual([]);
    const [issue] = questionGiven(
      crew,
      { stature: millimetres(1600) },
      { ...torso(480), path: ["readings", 2] },
    ).issues;
    expect(issue?.code).toBe("reading-unlikely-given");
    expect(issue?.severity).toBe("warning");
    expect(issue?.path).toEqual(["readings", 2]);
    // 1600 mm: mean 430 − 100·750/3600 = 409.2, standard deviation 21.7.
    expect(issue?.facts).toEqual({
      dimension: "torso length",
      label: "a crew, stature 1600 mm",
      side: "above",
      differenceMm: 71,
      usualMm: 409,
      sdMm: 22,
    });
    expect(issue?.message).toBe(
      "480 mm for the torso length is above what is usual for a crew, stature 1600 mm by 71 mm (usual: 409 mm, standard deviation 22 mm)",
    );
    const below = questionGiven(crew, { stature: millimetres(1800) }, torso(350));
    expect(below.issues[0]?.facts.side).toBe("below");
  });

  test("asks as early as it is told to", () => {
    const known = { stature: millimetres(1760) };
    expect(questionGiven(crew, known, torso(500)).issues).toHaveLength(0);
    expect(questionGiven(crew, known, torso(500), 0.05).issues).toHaveLength(1);
  });

  test("is sure where the known values leave no room", () => {
    const men = referencePopulation("men");
    const heights = { "cervicale-height": millimetres(1510), "iliac-crest-height": millimetres(1060) };
    const wrong = questionGiven(men, heights, torso(460));
    expect(wrong.tailProbability).toBe(0);
    expect(wrong.issues).toHaveLength(1);
    expect(Number.isFinite(wrong.score)).toBe(true);
    const right = questionGiven(men, heights, torso(450, 5));
    expect(right.tailProbability).toBeCloseTo(1, 6);
  });

  test("refuses what is no question", () => {
    expect(() => questionGiven(crew, { "torso-length": millimetres(430) }, torso(430))).toThrow(
      InvalidArgumentError,
    );
    const hips = { dimension: "hip-girth" as const, mm: millimetres(1000) };
    expect(() => questionGiven(crew, { stature: millimetres(1700) }, hips)).toThrow(InvalidArgumentError);
    expect(() => questionGiven(crew, {}, torso(-1))).toThrow(InvalidArgumentError);
    expect(() => questionGiven(crew, {}, torso(430, -1))).toThrow(InvalidArgumentError);
    expect(() => questionGiven(crew, {}, torso(430), 0)).toThrow(InvalidArgumentError);
  });
});
