import {
  auditReport,
  inferNominalIntervals,
  parseChart,
  type SizeChart,
  safeChartFromData,
  safeParseChart,
  safeParseChartCsv,
  safeParseChartJson,
} from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { type Against, against } from "./table/against.ts";

/** Lower and upper bound of each size's torso length, in millimetres. */
function torsos(chart: SizeChart): readonly (readonly [number, number] | undefined)[] {
  return chart.sizes.map(({ ranges }) => {
    const interval = ranges["torso-length"]?.interval;
    return interval && ([interval.from, interval.to] as const);
  });
}

/**
 * The inch is 25.4 mm exactly: NIST SP 811 (2008), Appendix B.8 ("inch (in) to millimeter (mm): 2.54 E+01",
 * in bold type, that is exact). From memory; the products are worked by hand.
 */
describe("an inch column in millimetres", () => {
  test.each([
    // 15 * 25.4 = 381; 16.5 * 25.4 = 419.1
    ["15-16 1/2", 381, 419.1],
    // 16.25 * 25.4 = 412.75; 18.375 * 25.4 = 466.725
    ["16 1/4 to 18 3/8", 412.75, 466.725],
    // 17.5 * 25.4 = 444.5; 20 * 25.4 = 508
    ["17.5 - 20", 444.5, 508],
    // 21.125 * 25.4 = 536.575; 22.0625 * 25.4 = 560.3875
    ["21-1/8 – 22-1/16", 536.575, 560.3875],
    // 39 * 25.4 = 990.6; 40 * 25.4 = 1016: the foot of a table that a rounded factor would miss
    ["39-40", 990.6, 1016],
  ])("%s", (cell, from, to) => {
    const text = `size\ttorso (in)\nM\t${cell}`;
    const inches = (name: string): Against =>
      against({
        of: `charts.${name}`,
        source: "NIST SP 811 (2008), App. B.8: the inch",
        origin: "worked by hand",
        why: "the nearest double to the exact product",
      });
    inches("parseChart").same(torsos(parseChart(text, { chart: "c" })), [[from, to]], 2);
    inches("safeParseChart").same(torsos(unwrap(safeParseChart(text, { chart: "c" }))), [[from, to]], 2);
    inches("safeParseChartCsv").same(
      torsos(unwrap(safeParseChartCsv(text, { chart: "c" }))),
      [[from, to]],
      2,
    );
    const data = {
      chart: "c",
      sizes: [{ size: "M", "torso-length": { from: `${from.toFixed(4)} mm`, to: `${to.toFixed(4)} mm` } }],
    };
    inches("safeChartFromData").same(torsos(unwrap(safeChartFromData(data))), [[from, to]], 2);
    inches("safeParseChartJson").same(
      torsos(unwrap(safeParseChartJson(JSON.stringify(data)))),
      [[from, to]],
      2,
    );
  });
});

/**
 * The pound is 453.592 37 g exactly and the ounce its sixteenth: NIST SP 811 (2008), Appendix B.8 (from memory).
 * The cubic inch is 2.54³ cm³ = 16.387 064 cm³ by the inch above: 2.54 * 2.54 = 6.4516; 6.4516 * 2.54 = 16.387064.
 */
describe("masses and volumes", () => {
  test.each([
    ["mass (lb)", "1", 453.59237],
    ["mass (oz)", "1", 28.349523125],
    ["mass", "3 lb 4 oz", 1474.1752025],
  ])("%s: %s", (header, cell, grams) => {
    const chart = parseChart(`size\ttorso (cm)\t${header}\nM\t43-48\t${cell}`, { chart: "c" });
    against({
      of: "charts.parseChart",
      source: "NIST SP 811 (2008), App. B.8: the pound and the ounce",
      origin: "printed (from memory)",
      why: "a few roundings",
    }).absolute(chart.sizes[0]?.massGrams, grams, 5e-11);
  });

  test("1000 cubic inches are 16.387064 litres", () => {
    const chart = parseChart("size\ttorso (cm)\tvolume (cu in)\nM\t43-48\t1000", { chart: "c" });
    against({
      of: "charts.parseChart",
      source: "the cubic inch by the inch",
      origin: "worked by hand",
      why: "a few roundings",
    }).absolute(chart.sizes[0]?.capacityLitres, 16.387064, 5e-13);
  });
});

/**
 * Worked by hand. Lengths of 41, 45, 48.5 and 53 cm; midpoints (41 + 45) / 2 = 43, (45 + 48.5) / 2 = 46.75,
 * (48.5 + 53) / 2 = 50.75. Half of the spacing at the ends: (45 - 41) / 2 = 2 below 41, so 39;
 * (53 - 48.5) / 2 = 2.25 above 53, so 55.25.
 */
test("nominal lengths to intervals", () => {
  const expected = [
    [390, 430],
    [430, 467.5],
    [467.5, 507.5],
    [507.5, 552.5],
  ];
  against({
    of: "charts.inferNominalIntervals",
    source: "midpoints, and half of the spacing at the ends",
    origin: "worked by hand",
    why: "tenths of a millimetre",
  }).same(
    inferNominalIntervals([410, 450, 485, 530]).map((each) => each && [each.from, each.to]),
    expected,
    8,
  );
  const chart = parseChart('size,torso (cm)\nS,41\nM,45\nL,"48,5"\nXL,53', { chart: "c" });
  expect(torsos(chart)).toEqual(expected);
});

/**
 * Worked by hand. Ranges 38–43 and 50–55 cm, lengths 46 and 58: from 46 down the edge 43, up the edge 50
 * (the midpoint to 58 is 52, further away); from 58 down the edge 55 (the midpoint 52 is further away), and
 * nothing above, so as far up as down: 58 + 3 = 61.
 */
test("nominal lengths among ranges", () => {
  const chart = parseChart("size,torso (cm)\nS,38-43\nM,46\nL,50-55\nXL,58", { chart: "c" });
  expect(torsos(chart)).toEqual([
    [380, 430],
    [430, 500],
    [500, 550],
    [550, 610],
  ]);
});

/** Neighbouring sizes of one chart usually overlap by about 2 to 3 cm: common practice, no source. */
test.each([
  [20, "overlap"],
  [30, "overlap"],
  [31, "overlap-wide"],
])("an overlap of %d mm", (widthMm, kind) => {
  const chart = parseChart(`size,torso (mm)\nS,380-${430 + widthMm}\nM,430-500`, { chart: "c" });
  const found = auditReport(chart).map((finding) =>
    "widthMm" in finding ? [finding.kind, finding.widthMm] : [],
  );
  against({
    of: "charts.auditReport",
    source: "neighbouring sizes of one chart usually overlap by about 2 to 3 cm",
    origin: "common practice, no source",
    why: "a width of overlap is a difference of two ends",
  }).same(found, [[kind, widthMm]], 2);
});
