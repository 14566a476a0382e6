import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { questionsOf } from "../readings.ts";

describe("readings-drift", () => {
  test("says by how much readings rise", () => {
    // Slope of 43.0, 43.5, 44.1, 44.4, 45.1: (−2 · 430 − 435 + 444 + 2 · 451)/10 = 5.1 mm, four steps 20.4 mm.
    expect(
      questionsOf("readings-drift", "43.0 cm, 43.5 cm, 44.1 cm, 44.4 cm, 45.1 cm", { path: ["torso"] }),
    ).toMatchObject([
      {
        severity: "warning",
        path: ["torso"],
        received: "43.0 cm, 43.5 cm, 44.1 cm, 44.4 cm, 45.1 cm",
        message: "the readings of the torso length drift: from the first to the last by 20.4 mm",
        facts: { driftMm: 20.4 },
      },
    ]);
  });

  test("says by how much they fall", () => {
    const [question] = questionsOf("readings-drift", "45.1 cm, 44.4 cm, 44.1 cm, 43.5 cm, 43.0 cm");
    expect(question?.facts.driftMm).toBe(-20.4);
  });

  test("is sure of a perfect line", () => {
    expect(questionsOf("readings-drift", "43 cm, 44 cm, 45 cm, 46 cm")).toHaveLength(1);
  });

  test("begins at the 1 % point of Student's t", () => {
    // Mean 441, slope 35/5 = 7, residual 250 − 7 · 35 = 5, t = 7/√(5/2/5) = 9.90; printed tables: t(0.995, 2) = 9.925.
    expect(questionsOf("readings-drift", "43.0 cm, 43.9 cm, 44.3 cm, 45.2 cm")).toEqual([]);
    // Mean 440.75, slope 7.1, residual 254.75 − 7.1 · 35.5 = 2.7, t = 7.1/√(2.7/2/5) = 13.7.
    expect(questionsOf("readings-drift", "43.0 cm, 43.8 cm, 44.3 cm, 45.2 cm")).toHaveLength(1);
  });

  test.each([
    ["three readings rise by chance in one of six cases", "43.1 cm, 45.2 cm, 47.3 cm"],
    ["no more than readings usually scatter", "43.0 cm, 43.1 cm, 43.2 cm, 43.3 cm, 43.4 cm, 43.5 cm"],
    ["up and down", "43.0 cm, 45.1 cm, 43.4 cm, 45.3 cm, 44.4 cm"],
    ["no change at all", "43.2 cm, 43.2 cm, 43.2 cm, 43.2 cm"],
  ])("not asked: %s", (_why, texts) => {
    expect(questionsOf("readings-drift", texts)).toEqual([]);
  });

  test("is asked of no more than one in a hundred sets that do not drift", () => {
    const random = createRandom(16);
    const trials = 4000;
    let asked = 0;
    for (let i = 0; i < trials; i += 1) {
      const texts = Array.from({ length: 5 }, () => `${(430 + 6 * random.normal()).toFixed(0)} mm`).join(
        ", ",
      );
      asked += questionsOf("readings-drift", texts).length;
    }
    expect(asked).toBeLessThan(trials * 0.01 + 4 * Math.sqrt(trials * 0.01));
  });
});
