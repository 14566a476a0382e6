import {
  dimension,
  landmark,
  limitRules,
  meanCurveSurplusMm,
  plausibleLimits,
  surveyFigures,
} from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";
import { type AnsurFigures, ansurFigures } from "./landmarks-ansur.ts";
import { against } from "./table/against.ts";

function published(column: string, sex: "women" | "men"): AnsurFigures {
  const found = ansurFigures.find((row) => row.column === column && row.sex === sex);
  if (found === undefined) throw new Error(`no published figures of ${column} of ${sex}`);
  return found;
}

const mean = ({ sum, n }: AnsurFigures): number => sum / n;

/** The text of what a slip or a shift rests on. */
function findingOf(basis: unknown): string {
  return JSON.stringify(basis);
}

describe("survey figures against ANSUR II (NATICK/TR-15/007, public individual data)", () => {
  test("each carried row has published figures to be checked by", () => {
    expect(surveyFigures.length).toBeGreaterThan(20);
    for (const row of surveyFigures) expect(published(row.column, row.sex).n).toBe(row.people);
  });

  // Half a unit of the last carried digit; extremes are whole millimetres and exact.
  test.each(surveyFigures)("$dimension of $sex ($sample)", (row) => {
    const source = published(row.column, row.sex);
    expect(row.sample).toBe(source.sample);
    expect(Math.abs(row.meanMm - mean(source))).toBeLessThanOrEqual(0.05);
    expect(Math.abs(row.sdMm - source.sd)).toBeLessThanOrEqual(0.05);
    expect([row.minMm, row.maxMm]).toEqual([source.min, source.max]);
  });
});

describe("plausible limits contain everybody in ANSUR II", () => {
  test.each(surveyFigures)("$dimension of $sex", (row) => {
    const source = published(row.column, row.sex);
    for (const group of ["adult", "child"] as const) {
      const { from, to } = plausibleLimits(row.dimension, group);
      against({
        of: "landmarks.plausibleLimits",
        source: "ANSUR II (Gordon et al. 2014), least and largest of everybody",
        origin: "counted in the public individual data",
        why: "the limits must lie outside",
      }).same([source.min > from, source.max < to], [true, true], 2);
    }
  });

  test("also where the dimension itself was not surveyed, by the neighbours that stand in for it", () => {
    // Waist girth at the navel and buttock girth: a girth between the two levels lies between them.
    expect(limitRules["hip-belt-girth"].from).toEqual(["waist-girth", "hip-girth"]);
    const { from, to } = plausibleLimits("hip-belt-girth", "adult");
    expect(from).toBeLessThan(published("waistcircumference", "women").min);
    expect(to).toBeGreaterThan(published("buttockcircumference", "women").max);
  });
});

describe("what the guide says of the curve and of the navel", () => {
  test("the curve is longer than the straight height by 9.9 mm on average in 1,986 women", () => {
    const along = mean(published("waistbacklength", "women"));
    const straight =
      mean(published("cervicaleheight", "women")) - mean(published("waistheightomphalion", "women"));
    // Means of differences are differences of means: 425.403 - (1395.667 - 980.149) = 9.885.
    expect(along - straight).toBeCloseTo(9.885, 3);
    expect(meanCurveSurplusMm).toBe(Math.round(along - straight));
    const bridging = dimension("torso-length").slips.find((slip) => slip.code === "tape-bridges-hollow");
    expect(findingOf(bridging?.size.basis)).toContain("9.9 mm longer");
    expect(bridging?.size.fromMm).toBeLessThan(along - straight);
    expect(bridging?.size.toMm).toBeGreaterThan(along - straight);
  });

  test("the navel lies 15 mm below the crest on average in women, so it lengthens a torso", () => {
    const crest = mean(published("iliocristaleheight", "women"));
    const navel = mean(published("waistheightomphalion", "women"));
    expect(crest - navel).toBeCloseTo(15.36, 1); // 995.512 - 980.149
    const shift = landmark("crest-line-at-spine").confusions.find(({ landmark: id }) => id === "omphalion")
      ?.shifts[0];
    expect(shift?.direction).toBe("+");
    expect(findingOf(shift?.basis)).toContain("980.1 mm");
    expect(findingOf(shift?.basis)).toContain("995.5 mm");
    expect(shift?.toMm).toBeGreaterThan(crest - navel);
  });

  test("from C7 to the navel along the back is more than crest to C7: 25.5 mm in women, 22.0 mm in men", () => {
    const column = "waistbacklength - (cervicaleheight - iliocristaleheight)";
    expect(mean(published(column, "women"))).toBeCloseTo(25.5, 1);
    expect(mean(published(column, "men"))).toBeCloseTo(22.0, 1);
    const slip = dimension("torso-length").slips.find(({ code }) => code === "navel-for-crest");
    expect(findingOf(slip?.size.basis)).toContain("25.5 mm more");
    expect(findingOf(slip?.size.basis)).toContain("22.0 mm in 2,040 men");
    // In somebody the sign turns, and the guide says so.
    expect(published(column, "women").min).toBeLessThan(0);
    expect(findingOf(slip?.size.basis)).toContain("the sign turns");
  });
});
