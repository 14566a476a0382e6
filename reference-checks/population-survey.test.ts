import {
  andersonDarlingCriticalValues,
  menReference,
  type ReferenceVariable,
  referencePopulation,
  referenceTable,
  womenReference,
} from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { ansurFigures } from "./landmarks-ansur.ts";
import survey from "./population-survey.json" with { type: "json" };

const cuts = ["women", "men"] as const;

/** The survey's column of a variable of the regression. */
const columns: Readonly<Record<string, ReferenceVariable>> = {
  torso: "torso-length",
  waistbacklength: "back-waist-length",
  waistcircumference: "waist-girth",
  buttockcircumference: "hip-girth",
  chestcircumference: "chest-girth",
};

describe(`the reference population against ${survey.source} (${survey.origin})`, () => {
  test.each(cuts)("what is expected of %s given stature and body mass is R's regression", (cut) => {
    const { statureMm, massKg, given } = survey[cut];
    const known = { stature: millimetres(statureMm), "mass-kg": massKg };
    const model = referencePopulation(cut).conditional(known);
    expect(given).toHaveLength(5);
    for (const { column, mean, sd } of given) {
      const own = model.distribution(columns[column] ?? "stature");
      // The carried covariances have four decimals.
      expect(own.mean).toBeCloseTo(mean, 3);
      expect(own.sd).toBeCloseTo(sd, 4);
    }
  });

  test.each(cuts)("correlations of %s", (cut) => {
    const { correlations } = survey[cut];
    const { variables, covariance } = referencePopulation(cut);
    const correlation = (a: ReferenceVariable, b: ReferenceVariable): number => {
      const [i, j] = [variables.indexOf(a), variables.indexOf(b)];
      const entry = (k: number, l: number): number => covariance[k]?.[l] ?? 0;
      return entry(i, j) / Math.sqrt(entry(i, i) * entry(j, j));
    };
    expect(correlation("stature", "torso-length")).toBeCloseTo(correlations.statureTorso, 6);
    expect(correlation("waist-girth", "hip-girth")).toBeCloseTo(correlations.waistHip, 6);
    expect(correlation("chest-girth", "mass-kg")).toBeCloseTo(correlations.chestMass, 6);
  });

  test("torso length passes a test of normality among women and fails it among men", () => {
    const [, , , oneInHundred] = andersonDarlingCriticalValues;
    const tenInHundred = andersonDarlingCriticalValues[0];
    expect(survey.women.torsoNormality.adjusted).toBeLessThan(tenInHundred?.value ?? 0);
    expect(survey.men.torsoNormality.adjusted).toBeGreaterThan(oneInHundred?.value ?? 0);
  });
});

describe("the half sample against the figures of everybody (ANSUR II, recomputed with exact fractions)", () => {
  const whole = ansurFigures.filter(({ sample }) => sample === "all");
  const rows = cuts
    .flatMap((cut) => referenceTable(cut))
    .flatMap((row) => {
      const all = whole.find(({ column, sex }) => column === row.column && sex === row.cut);
      return all === undefined ? [] : [{ name: `${row.cut}, ${row.variable}`, row, all }];
    });

  test("there are rows to compare", () => {
    expect(rows.length).toBeGreaterThanOrEqual(11);
  });

  // The survey's report prints figures of everybody; here only half of the people are at hand. Half of a
  // finite population strays from the whole by s √((1 − ½) / n), four of which one figure in 16,000 exceeds.
  test.each(rows)("$name", ({ row, all }) => {
    const share = 1 - row.people / all.n;
    expect(Math.abs(row.mean - all.sum / all.n)).toBeLessThanOrEqual(
      4 * row.sd * Math.sqrt(share / row.people),
    );
    expect(Math.abs(row.sd - all.sd)).toBeLessThanOrEqual(4 * row.sd * Math.sqrt(share / (2 * row.people)));
    expect(row.min).toBeGreaterThanOrEqual(all.min);
    expect(row.max).toBeLessThanOrEqual(all.max);
  });
});

describe("the half sample's figures (R 4.2.2)", () => {
  const half = ansurFigures.filter(({ sample }) => sample === "even");
  const rows = cuts
    .flatMap((cut) => referenceTable(cut))
    .flatMap((row) => {
      const same = half.find(({ column, sex }) => column === row.column && sex === row.cut);
      return same === undefined ? [] : [{ name: `${row.cut}, ${row.variable}`, row, same }];
    });

  test.each(rows)("$name", ({ row, same }) => {
    expect(row.people).toBe(same.n);
    expect(row.mean).toBeCloseTo(same.sum / same.n, 4);
    expect(row.sd).toBeCloseTo(same.sd, 4);
    expect([row.min, row.max]).toEqual([same.min, same.max]);
  });

  test.each([womenReference, menReference])("the light figures of $cut are the same", (light) => {
    const { variables, mean, covariance } = referencePopulation(light.cut);
    light.dimensions.forEach((dimension, i) => {
      const place = variables.indexOf(dimension);
      expect(mean[place]).toBeCloseTo(light.meanMm[i] ?? 0, 3);
      expect(Math.sqrt(covariance[place]?.[place] ?? 0)).toBeCloseTo(light.sdMm[i] ?? 0, 3);
    });
  });
});
