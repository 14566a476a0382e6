import { type EstimateInput, safeEstimate } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import { questionsOf, readingsOf } from "../readings.ts";

const suspects = (dimension: EstimateInput["dimension"], texts: string) =>
  safeEstimate({ dimension, readings: readingsOf(texts) }).issues.filter(({ code }) =>
    ["reading-unit-suspect", "reading-implausible"].includes(code),
  );

describe("reading-unit-suspect", () => {
  test("offers the same number in the unit that would be likely, and leaves the reading", () => {
    const outcome = safeEstimate({
      dimension: "torso-length",
      readings: readingsOf("17 cm"),
      path: ["readings", "torso-length"],
    });
    expect(outcome.ok && outcome.value.mm).toBe(170);
    expect(outcome.issues[0]).toMatchObject({
      code: "reading-unit-suspect",
      severity: "warning",
      path: ["readings", "torso-length", 0],
      received: "17 cm",
      message: "17 cm is unlikely for the torso length; 17 in would be likely",
      expected: "the unit that the tape shows",
      facts: { other: "17 in" },
    });
  });

  test.each([
    ["torso-length", "18 3/8 cm", "18.375 in"],
    ["torso-length", "43.2 in", "43.2 cm"],
    ["torso-length", "432 cm", "432 mm"],
    ["torso-length", "43.2 mm", "43.2 cm"],
    ["torso-length", "17 mm", "17 in"],
    ["torso-length", "432 in", "432 mm"],
    ["torso-length", "0.43 in", undefined],
    ["hip-belt-girth", "36 cm", "36 in"],
    ["hip-belt-girth", "91 in", "91 cm"],
    ["stature", "171 mm", "171 cm"],
    ["stature", "67 cm", "67 in"],
    ["stature", "1.71 cm", undefined],
  ] as const)("%s of %s: %s", (dimension, text, other) => {
    const found = suspects(dimension, text);
    expect(found.map(({ facts }) => facts.other)).toEqual([other]);
  });

  test("takes a number for inches that only a child could have in centimetres", () => {
    expect(suspects("hip-girth", "55 cm").map(({ facts }) => facts.other)).toEqual(["55 in"]);
    // 75 in would be nobody's.
    expect(suspects("hip-girth", "75 cm")).toEqual([]);
    expect(suspects("stature", "105 cm")).toEqual([]);
  });

  test("keeps the position of each reading", () => {
    expect(suspects("torso-length", "43 cm, 17 cm, 17 in, 430 cm").map(({ path }) => path)).toEqual([
      [1],
      [3],
    ]);
  });
});

describe("reading-implausible", () => {
  test("says what surveys found", () => {
    const [question] = suspects("torso-length", "75 cm");
    expect(question).toMatchObject({ code: "reading-implausible", path: [0], received: "75 cm" });
    expect(question?.message).toMatch(
      /^75 cm is outside what surveys found for the torso length \(\d+ to \d+ mm\)$/,
    );
    const { lowestMm, highestMm } = question?.facts ?? {};
    expect(Number(lowestMm)).toBeLessThan(400);
    expect(Number(highestMm)).toBeLessThan(750);
  });

  test("lets grown people and children through", () => {
    expect(suspects("torso-length", "43 cm")).toEqual([]);
    expect(suspects("torso-length", "31 cm")).toEqual([]);
    expect(suspects("torso-length", "27 cm")).toEqual([]);
    expect(suspects("stature", "1.71 m, 105 cm, 5 ft 7 in")).toEqual([]);
  });
});

describe("readings-mixed-units", () => {
  test("is asked once of readings from both sides of the tape", () => {
    expect(questionsOf("readings-mixed-units", "43.2 cm, 17 in, 431 mm", { path: ["torso"] })).toMatchObject([
      {
        severity: "warning",
        path: ["torso"],
        received: "43.2 cm, 17 in, 431 mm",
        message: "the readings of the torso length are partly in feet or inches and partly in metric units",
        expected: "one side of the tape for all readings",
      },
    ]);
  });

  test.each(["43.2 cm, 431 mm, 0.43 m", "17 in, 1 ft 5 in", "17 in", "43 cm"])("not asked: %s", (texts) => {
    expect(questionsOf("readings-mixed-units", texts)).toEqual([]);
  });
});
