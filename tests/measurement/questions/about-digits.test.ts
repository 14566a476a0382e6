import { parseEstimate } from "@tapewise/measurement";
import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { lineOf, questionsOf, readingsOf } from "../readings.ts";

describe("readings-rounded", () => {
  test("says to what the readings are rounded, and to what they are written", () => {
    const [question, ...others] = questionsOf("readings-rounded", "43.0 cm, 44.0 cm, 45.0 cm", {
      path: ["torso"],
    });
    expect(others).toEqual([]);
    expect(question).toMatchObject({
      severity: "warning",
      path: ["torso"],
      received: "43.0 cm, 44.0 cm, 45.0 cm",
      message: "all 3 readings of the torso length are multiples of 1 cm, though they are written to 1 mm",
      expected:
        "readings to the nearest mark of the tape; the estimate counts the coarser step, unless the error is stated",
    });
  });

  test.each([
    ["43.5 cm, 44.0 cm, 45.5 cm", "0.5 cm"],
    ["43.18 cm, 45.72 cm", "1 in"],
    // 17 1/2 in, 18 in, 17 in
    ["444.5 mm, 457.2 mm, 431.8 mm", "1/2 in"],
    ["444.50 mm, 450.85 mm, 431.80 mm", "1/4 in"],
    ["16 16/32 in, 17 16/32 in", "1/2 in"],
    ["17 0/64 in, 18 0/64 in", "1 in"],
  ])("%s are multiples of %s", (texts, coarse) => {
    expect(questionsOf("readings-rounded", texts)).toMatchObject([{ facts: { coarse } }]);
  });

  test.each([
    ["by chance one in a hundred pairs ends in two noughts", "43.0 cm, 44.0 cm"],
    ["one is off the coarser step", "43.0 cm, 44.0 cm, 45.1 cm"],
    ["written as coarse as they are", "43 cm, 44 cm, 45 cm"],
    ["the same reading over and over is another question", "43.0 cm, 43.0 cm, 43.0 cm, 43.0 cm"],
    ["one reading", "43.0 cm"],
    ["inches as whole as they are written", "17 in, 18 in, 19 in, 17 in"],
  ])("not asked: %s", (_why, texts) => {
    expect(questionsOf("readings-rounded", texts)).toEqual([]);
  });

  test("does not make the estimate count the coarser step where the error is stated", () => {
    const error = { biasMm: 0, repeatMm: 8, resolutionMm: 1 };
    const readings = readingsOf("43.0 cm, 44.0 cm, 45.0 cm");
    const estimate = parseEstimate({ dimension: "torso-length", readings, error });
    expect(lineOf(estimate, "resolution").uncertaintyMm ** 2).toBeCloseTo(1 / 36, 12);
    expect(questionsOf("readings-rounded", "43.0 cm, 44.0 cm, 45.0 cm", { error })).toHaveLength(1);
  });
});

describe("readings-too-alike", () => {
  test("is asked when all readings agree to a mark much finer than the usual scatter", () => {
    // Step 1 mm, scatter 6 mm: (1/(6 √(2π)))² / √3 = 0.0026 < 0.01
    expect(questionsOf("readings-too-alike", "43.2 cm, 432 mm, 43.2 cm", { path: ["torso"] })).toMatchObject([
      {
        path: ["torso"],
        received: "43.2 cm",
        message:
          "all 3 readings of the torso length are the same, which real readings seldom are; one may have been remembered",
        facts: { count: 3 },
      },
    ]);
  });

  test.each([
    ["a coarse step makes readings agree: (10/15.04)² / √3 = 0.26", "43 cm, 43 cm, 43 cm"],
    ["two may agree: (1/15.04) / √2 = 0.05", "43.2 cm, 43.2 cm"],
    ["one differs", "43.2 cm, 43.2 cm, 43.3 cm"],
  ])("not asked: %s", (_why, texts) => {
    expect(questionsOf("readings-too-alike", texts)).toEqual([]);
  });

  test("begins where the chance falls below one in a hundred", () => {
    // Step 1 mm: (1/(σ √(2π)))² / √3 = 0.01 at σ = 3.03 mm.
    const scattering = (repeatMm: number) => ({ error: { biasMm: 0, repeatMm, resolutionMm: 1 } });
    expect(questionsOf("readings-too-alike", "43.2 cm, 43.2 cm, 43.2 cm", scattering(3.1))).toHaveLength(1);
    expect(questionsOf("readings-too-alike", "43.2 cm, 43.2 cm, 43.2 cm", scattering(2.95))).toEqual([]);
    // Two readings are too few to say so, however much they should scatter.
    expect(questionsOf("readings-too-alike", "43.2 cm, 43.2 cm", scattering(100))).toEqual([]);
  });

  test("not asked where readings are stated not to scatter", () => {
    const error = { biasMm: 6, repeatMm: 0, resolutionMm: 1 };
    expect(questionsOf("readings-too-alike", "43.2 cm, 43.2 cm, 43.2 cm", { error })).toEqual([]);
  });

  test("happens to real readings about as seldom as its formula says", () => {
    const random = createRandom(432);
    const trials = 200_000;
    let alike = 0;
    for (let i = 0; i < trials; i += 1) {
      const length = 430 + random.uniform();
      const [a, b, c] = [1, 2, 3].map(() => Math.round(length + 6 * random.normal()));
      if (a === b && b === c) alike += 1;
    }
    const chance = (1 / (6 * Math.sqrt(2 * Math.PI))) ** 2 / Math.sqrt(3);
    expect(Math.abs(alike - trials * chance)).toBeLessThan(4 * Math.sqrt(trials * chance));
  });
});
