import { parseChart, type SizeChart } from "@tapewise/charts";
import { defaultPolicy, recommend } from "@tapewise/fit";
import { unwrap } from "@tapewise/outcome";
import { type PersonLine, safeReadPerson } from "tapewise/batch";
import { describe, expect, test } from "vitest";
import { chanceToFit } from "../../../../packages/tapewise/src/command/report/chance.ts";
import { headline } from "../../../../packages/tapewise/src/command/report/headline.ts";

// The error of the readings is normal with a standard deviation of 6 mm; nothing is asked to be read again.
const policy = { ...defaultPolicy, mostFurtherReadings: 0 };
const headlineOf = (chart: SizeChart, readings: PersonLine["readings"]) => {
  const person = unwrap(safeReadPerson({ error: { biasMm: 6, repeatMm: 0, resolutionMm: 0 }, readings }));
  return headline(unwrap(recommend(person, chart, { unit: "cm", policy })));
};
const chartOf = (sizes: readonly object[], belts?: readonly object[]) =>
  parseChart(JSON.stringify({ chart: "Egg", sizes, ...(belts === undefined ? {} : { belts }) }));

const sizes = [
  { size: "S", "torso-length": "36-42 cm" },
  { size: "M", "torso-length": "42-48 cm" },
];
const belted = chartOf(sizes, [
  { belt: "1", "hip-belt-girth": "70-80 cm" },
  { belt: "2", "hip-belt-girth": "90-100 cm" },
]);
const at = (torso: string, hips?: string): PersonLine["readings"] => ({
  "torso-length": [torso],
  ...(hips === undefined ? {} : { "hip-belt-girth": [hips] }),
});

describe("where hip belts are sized separately and the pack fits", () => {
  test("a girth between the belts is no fault of the size", () => {
    // 87 cm is 5 σ from belt 2.
    expect(headlineOf(belted, at("45 cm", "87 cm"))).toBe(
      "The pack fits in M (more than 99 %), but none of its hip belts does. The nearest is 2, with a chance of less than 1 % to fit.",
    );
  });

  test("a girth beyond the belts does not put the size outside of the chart", () => {
    expect(headlineOf(belted, at("45 cm", "120 cm"))).toBe(
      "The pack fits in M (more than 99 %), but the hip-belt girth lies above all of its hip belts. The nearest is 2, with a chance of less than 1 % to fit.",
    );
  });

  test("two belts may be a toss-up", () => {
    const touching = chartOf(sizes, [
      { belt: "1", "hip-belt-girth": "70-85 cm" },
      { belt: "2", "hip-belt-girth": "85-100 cm" },
    ]);
    // Φ(0.1 / 6) = 0.507
    expect(headlineOf(touching, at("45 cm", "85.01 cm"))).toBe(
      "The pack fits in M (more than 99 %); of its hip belts, 2 or 1, about equally likely (51 % and 49 %).",
    );
  });

  test("a pack that does not fit comes first", () => {
    expect(headlineOf(belted, at("52 cm", "87 cm"))).toBe(
      "Outside the range of this chart: the torso length lies above its upper end. The nearest size is M, with a chance of less than 1 % to fit (exceptionally unlikely).",
    );
  });
});

describe("where no size is a clear one", () => {
  test("a toss-up is told as one, on either side of one half", () => {
    // Φ(0.1 / 6) = 0.507 for M, which begins at 42 cm.
    expect(headlineOf(chartOf(sizes), at("42.01 cm"))).toBe(
      "M or S, about equally likely (51 % and 49 %): the torso length lies between the two.",
    );
    const gap = chartOf([
      { size: "S", "torso-length": "36-41.9 cm" },
      { size: "M", "torso-length": "42.1-48 cm" },
    ]);
    // Φ((420.1 − 421) / 6) = Φ(−0.15) = 0.440 for M and Φ((419 − 420.1) / 6) = Φ(−0.183) = 0.427 for S.
    expect(headlineOf(gap, at("42.01 cm"))).toBe(
      "M or S, about equally likely (44 % and 43 %): the torso length lies between the two.",
    );
  });

  test("dimensions that disagree are named", () => {
    const both = chartOf([
      { size: "S", "torso-length": "36-42 cm", "hip-belt-girth": "70-80 cm" },
      { size: "M", "torso-length": "42-48 cm", "hip-belt-girth": "80-90 cm" },
    ]);
    expect(headlineOf(both, at("45 cm", "75 cm"))).toMatch(
      /^No size suits both the torso length and the hip-belt girth\. The best is [SM], with a chance of less than 1 % to fit \(exceptionally unlikely\)\.$/,
    );
  });

  test("a gap names the dimension and the better side", () => {
    const gap = chartOf([
      { size: "S", "torso-length": "36-42 cm" },
      { size: "M", "torso-length": "44-48 cm" },
    ]);
    // Φ((434 − 440) / 6) = Φ(−1) = 0.159
    expect(headlineOf(gap, at("43.4 cm"))).toBe(
      "The torso length lies between M and S. The better one is M, with a 16 % chance to fit (unlikely).",
    );
  });
});

test.each([
  [0.55, "a 55 % chance to fit"],
  [0.8, "an 80 % chance to fit"],
  [0.08, "an 8 % chance to fit"],
  [0.11, "an 11 % chance to fit"],
  [0.18, "an 18 % chance to fit"],
  [0.999, "a chance of more than 99 % to fit"],
])("a probability of %d is %s", (probability, words) => {
  expect(chanceToFit(probability)).toBe(words);
});
