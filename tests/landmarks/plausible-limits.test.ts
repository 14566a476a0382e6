import {
  type AgeGroup,
  childLowerPercent,
  type DimensionId,
  dimensionIds,
  limitRules,
  plausibleLimits,
  surveyFigures,
  wideningRules,
} from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("plausibleLimits", () => {
  // By hand from the smallest and largest readings of ANSUR II (Gordon et al. 2014, NATICK/TR-15/007;
  // recomputed from the public individual data), widened and rounded outwards to 10 mm.
  test.each<[DimensionId, number, number]>([
    ["stature", 1260, 2200], // 0.9 * 1409 = 1268.1; 1.1 * 1993 = 2192.3
    ["cervicale-height", 1060, 1890], // 0.9 * 1184 = 1065.6; 1.1 * 1718 = 1889.8
    ["torso-length", 290, 610], // 0.9 * 330 = 297; 1.1 * 546 = 600.6
    ["hip-girth", 620, 1880], // 0.85 * 737 = 626.45; 1.4 * 1341 = 1877.4
    ["chest-girth", 640, 2060], // 0.85 * 764 = 649.4; 1.4 * 1469 = 2056.6
    ["hip-belt-girth", 510, 1910], // waist 0.85 * 611 = 519.35; waist 1.4 * 1358 = 1901.2
  ])("%s of adults: %i to %i mm", (id, from, to) => {
    expect(plausibleLimits(id, "adult")).toEqual({ from, to, fromClosed: true, toClosed: true });
  });

  test.each(dimensionIds)("%s: the limits are those that survey and rules come to", (id) => {
    const rule = limitRules[id];
    const { lowerPercent, upperPercent } = wideningRules[rule.rule];
    const rows = surveyFigures.filter((row) => rule.from.includes(row.dimension));
    const below = (mm: number, percent: number) => Math.floor((mm * percent) / 1000) * 10;
    const from = below(Math.min(...rows.map((row) => row.minMm)), lowerPercent);
    const to = Math.ceil((Math.max(...rows.map((row) => row.maxMm)) * upperPercent) / 1000) * 10;
    const closed = { fromClosed: true, toClosed: true };
    expect(plausibleLimits(id, "adult")).toEqual({ from, to, ...closed });
    expect(plausibleLimits(id, "child")).toEqual({ from: below(from, childLowerPercent), to, ...closed });
  });

  test("children may be smaller, and as large as adults", () => {
    expect(plausibleLimits("stature", "child").from).toBe(880); // 0.7 * 1260 = 882
    expect(plausibleLimits("torso-length", "child").from).toBe(200); // 0.7 * 290 = 203
    for (const id of dimensionIds) {
      expect(plausibleLimits(id, "child").from).toBeLessThan(plausibleLimits(id, "adult").from);
      expect(plausibleLimits(id, "child").to).toBe(plausibleLimits(id, "adult").to);
    }
  });

  test("a back written in inches but called centimetres is not plausible, nor the other way round", () => {
    const torso = plausibleLimits("torso-length", "child");
    expect(17 * 10).toBeLessThan(torso.from); // 17 in read as 17 cm
    expect(43 * 25.4).toBeGreaterThan(torso.to); // 43 cm read as 43 in
  });

  test("an unknown dimension or age group is a programmer's mistake", () => {
    expect(() => plausibleLimits("inseam" as DimensionId, "adult")).toThrow(InvalidArgumentError);
    expect(() => plausibleLimits("toString" as DimensionId, "adult")).toThrow(InvalidArgumentError);
    expect(() => plausibleLimits("stature", "baby" as AgeGroup)).toThrow('group must be "adult" or "child"');
  });
});
