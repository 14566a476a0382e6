import { describe, expect, test } from "vitest";
import { questionsOf, readingsOf } from "../readings.ts";

const helper = { conditions: { tool: "tape", measuredBy: "helper", landmarksFoundAfresh: false } } as const;

describe("reading-apart", () => {
  test("names the reading, how far it lies and how far would be usual", () => {
    const [question, ...others] = questionsOf("reading-apart", "43.2 cm, 43.7 cm, 47.1 cm", {
      path: ["torso"],
    });
    expect(others).toEqual([]);
    // The middle is 437; the usual scatter √(36 + 1/12) = 6.007, twice that 12.0.
    expect(question).toMatchObject({
      severity: "warning",
      path: ["torso", 2],
      received: "47.1 cm",
      message: "47.1 cm lies 34 mm from the middle of all readings of the torso length",
      expected: "readings that lie within about 12 mm of each other; read again before you leave one out",
    });
    // Mean 446.6667, s = 21.2211, G = 24.3333/21.2211; 2/√3 · cos(π 0.05/6) = 1.1543
    expect(question?.facts).toMatchObject({
      readingMm: 471,
      middleMm: 437,
      statistic: 1.147,
      critical: 1.154,
    });
  });

  test("is asked by the known spread where Grubbs' test of three can hardly say anything", () => {
    // The two-sided 0.1 % point of the normal distribution is 3.29; 3.29 · 6.007 · √1.5 = 24.2 mm.
    expect(questionsOf("reading-apart", "43.2 cm, 43.7 cm, 46.2 cm")).toHaveLength(1);
    expect(questionsOf("reading-apart", "43.2 cm, 43.7 cm, 46.1 cm")).toEqual([]);
  });

  test("is asked by Grubbs' test where the others agree better than the method lets expect", () => {
    // Middle 432; 14 mm is more than twice the usual 6 mm, and far outside of what the others show.
    const texts = "43.2 cm, 43.1 cm, 43.3 cm, 43.2 cm, 44.6 cm";
    const [question] = questionsOf("reading-apart", texts);
    expect(question).toMatchObject({ path: [4], facts: { differenceMm: 14 } });
    // 9 mm is not worth a question, though Grubbs' test makes an outlier of it.
    expect(questionsOf("reading-apart", "43.2 cm, 43.1 cm, 43.3 cm, 43.2 cm, 44.1 cm")).toEqual([]);
  });

  test("does not take two readings on one mark for readings that agree to a hair", () => {
    // 430, 430, 450 to 10 mm: s² = 400/3, G = 13.33/√(133.3 + 8.3) = 1.120 and not 1.1547; 1.154 is critical.
    expect(
      questionsOf("reading-apart", "43 cm, 43 cm, 45 cm", { conditions: { measuredBy: "self" } }),
    ).toEqual([]);
    // 430, 430, 448 to 1 mm: s² = 108, G = 12/√(108 + 1/12) = 1.1543 at 18 mm, and 20 mm is beyond it.
    expect(questionsOf("reading-apart", "43.1 cm, 43.1 cm, 44.9 cm")).toEqual([]);
    expect(questionsOf("reading-apart", "43.1 cm, 43.1 cm, 45.1 cm")).toMatchObject([
      { facts: { statistic: 1.154 } },
    ]);
  });

  test("names only the farthest by Grubbs' test, not all that lie far", () => {
    // Of 14 the one at 452 has G = 2.9, beyond 2.507; the one at 445 is 13 mm off, as no more than a few are.
    const near = "43.2 cm, 43.1 cm, 43.3 cm, 43.2 cm, 43.1 cm, 43.3 cm";
    const found = questionsOf("reading-apart", `${near}, 44.5 cm, ${near}, 45.2 cm`);
    expect(found.map(({ path }) => path)).toEqual([[13]]);
  });

  test("is asked of each reading that lies apart, below as above", () => {
    const found = questionsOf("reading-apart", "43.2 cm, 33 cm, 43.4 cm, 43.1 cm, 53.1 cm");
    expect(found.map(({ path }) => path)).toEqual([[1], [4]]);
  });

  test("is not asked of one or two readings", () => {
    expect(questionsOf("reading-apart", "43 cm")).toEqual([]);
    expect(questionsOf("reading-apart", "43 cm, 53 cm")).toEqual([]);
  });

  test.each([
    "17 in, 17 in, 18 in",
    "18 in, 17 in, 17 in, 17 in, 17 in",
    "43 cm, 43 cm, 44 cm",
    "43 cm, 44 cm, 43 cm, 43 cm, 43 cm, 43 cm",
    "17 1/2 in, 17 1/2 in, 18 in",
    "43.0 cm, 43.0 cm, 44.0 cm, 43.0 cm, 44.0 cm",
  ])("is not asked of one mark more or less: %s", (texts) => {
    expect(questionsOf("reading-apart", texts, helper)).toEqual([]);
  });

  test("is asked of several marks more", () => {
    expect(questionsOf("reading-apart", "17 in, 17 in, 19 in", helper)).toHaveLength(1);
    expect(questionsOf("reading-apart", "43 cm, 43 cm, 46 cm", helper)).toHaveLength(1);
  });

  test("takes a stated error for its usual spread", () => {
    const error = { biasMm: 0, repeatMm: 20, resolutionMm: 1 };
    expect(questionsOf("reading-apart", "43.2 cm, 43.7 cm, 47.1 cm", { error })).toEqual([]);
    const sharp = { biasMm: 0, repeatMm: 1, resolutionMm: 1 };
    expect(questionsOf("reading-apart", "43.2 cm, 43.3 cm, 44 cm", { error: sharp })).toHaveLength(1);
  });

  test("of readings without scatter or step is Grubbs' alone", () => {
    const error = { biasMm: 0, repeatMm: 0, resolutionMm: 0 };
    const exact = readingsOf("43 cm, 43 cm, 43 cm, 43 cm, 43.1 cm").map((reading) => ({
      ...reading,
      stepMm: 0,
    }));
    // The brand of a step is lost in the spread; a step of 0 is as good a length as any.
    const readings = exact as unknown as ReturnType<typeof readingsOf>;
    expect(questionsOf("reading-apart", "43 cm", { readings, error })).toMatchObject([{ path: [4] }]);
  });
});
