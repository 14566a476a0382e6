import { createRandom } from "@tapewise/statistics";
import { describe, expect, test } from "vitest";
import { questionsOf } from "../readings.ts";

describe("readings-scatter", () => {
  test("says by how much readings scatter, and by how much is usual", () => {
    // 420 and 448: s = 28/√2 = 19.8 mm; (19.8/6.007)² = 10.86 is beyond 6.635, the 1 % point of χ² with 1 df.
    expect(questionsOf("readings-scatter", "42.1 cm, 44.9 cm", { path: ["torso"] })).toMatchObject([
      {
        severity: "warning",
        path: ["torso"],
        received: "42.1 cm, 44.9 cm",
        message:
          "the readings of the torso length scatter by 19.8 mm (standard deviation), more than the 6 mm usual for this way of measuring",
        facts: { sampleMm: 19.8, usualMm: 6 },
      },
    ]);
  });

  test("begins at the 1 % point of chi-square", () => {
    // s = d/√2 reaches 6.007 · √6.6349 at d = 21.88 mm (χ² point printed in many tables as 6.635).
    expect(questionsOf("readings-scatter", "43.1 cm, 45.2 cm")).toEqual([]);
    expect(questionsOf("readings-scatter", "43.1 cm, 45.3 cm")).toHaveLength(1);
  });

  test("allows for the rounding of the readings", () => {
    // One inch apart: s = 18 mm, usual √(36 + 25.4²/12) = 9.5 mm, (18/9.5)² = 3.6.
    expect(questionsOf("readings-scatter", "17 in, 18 in")).toEqual([]);
    const [question] = questionsOf("readings-scatter", "17 in, 19 in");
    expect(question?.facts).toMatchObject({ sampleMm: 35.9, usualMm: 9.5 });
  });

  test("leaves the word to a reading that lies apart", () => {
    const texts = "43.2 cm, 43.7 cm, 49.1 cm";
    expect(questionsOf("reading-apart", texts)).toHaveLength(1);
    expect(questionsOf("readings-scatter", texts)).toEqual([]);
  });

  test("takes a stated error for what is usual, in as many digits as it takes", () => {
    const error = { biasMm: 0, repeatMm: 0.02, resolutionMm: 0.01 };
    const [question] = questionsOf("readings-scatter", "43.21 cm, 43.23 cm", { error });
    // Written to 0.1 mm: √(0.02² + 0.1²/12) = 0.035 mm; s = 0.2/√2 = 0.14 mm.
    expect(question?.facts).toMatchObject({ sampleMm: 0.14, usualMm: 0.035 });
  });

  test.each([
    ["1e9 mm apart", "1 mm, 1000000000 mm", 1],
    ["one reading", "43 cm", 0],
    ["no scatter", "43.2 cm, 43.2 cm", 0],
  ])("%s", (_what, texts, count) => {
    expect(questionsOf("readings-scatter", texts)).toHaveLength(count);
  });

  test("is asked of about one in a hundred sets that scatter as they should", () => {
    const random = createRandom(28);
    const trials = 4000;
    let asked = 0;
    for (let i = 0; i < trials; i += 1) {
      const texts = [1, 2].map(() => `${(430 + 6 * random.normal()).toFixed(0)} mm`).join(", ");
      asked += questionsOf("readings-scatter", texts).length;
    }
    expect(Math.abs(asked - trials * 0.01)).toBeLessThan(4 * Math.sqrt(trials * 0.01));
  });
});
