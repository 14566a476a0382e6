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
import { against } from "./table/against.ts";

const cuts = ["women", "men"] as const;

/** The survey's column of a variable of the regression. */
const columns: Readonly<Record<string, ReferenceVariable>> = {
  torso: "torso-length",
  waistbacklength: "back-waist-length",
  waistcircumference: "waist-girth",
  buttockcircumference: "hip-girth",
  chestcircumference: "chest-girth",
};

const regression = against({
  of: "population.referencePopulation",
  source: "ANSUR II (Gordon et al. 2014), regression on stature and body mass; correlations",
  origin: "recomputed with R 4.2.2",
  why: "the carried covariances have four decimals",
});

describe(`the reference population against ${survey.source} (${survey.origin})`, () => {
  test.each(cuts)("what is expected of %s given stature and body mass is R's regression", (cut) => {
    const { statureMm, massKg, given } = survey[cut];
    const known = { stature: millimetres(statureMm), "mass-kg": massKg };
    const model = referencePopulation(cut).conditional(known);
    expect(given).toHaveLength(5);
    for (const { column, mean, sd } of given) {
      const own = model.distribution(columns[column] ?? "stature");
      // The carried covariances have four decimals.
      regression.absolute(own.mean, mean, 5e-4);
      regression.absolute(own.sd, sd, 5e-5);
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
    regression.absolute(correlation("stature", "torso-length"), correlations.statureTorso, 5e-7);
    regression.absolute(correlation("waist-girth", "hip-girth"), correlations.waistHip, 5e-7);
    regression.absolute(correlation("chest-girth", "mass-kg"), correlations.chestMass, 5e-7);
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
    const figures = against({
      of: "population.referenceTable",
      source: "ANSUR II (Gordon et al. 2014, NATICK/TR-15/007), public individual data, even subject numbers",
      origin: "recomputed with R 4.2.2",
      why: "four decimals are carried",
    });
    figures.same(row.people, same.n);
    figures.absolute(row.mean, same.sum / same.n, 5e-5);
    figures.absolute(row.sd, same.sd, 5e-5);
    figures.same([row.min, row.max], [same.min, same.max], 2);
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
