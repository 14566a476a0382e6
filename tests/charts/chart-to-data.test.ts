import { chartToData, type SizeChart, safeChartFromData } from "@tapewise/charts";
import { interval } from "@tapewise/intervals";
import type { Millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { read } from "./charts-in-tests.ts";

const mm = (value: number): Millimetres => value as Millimetres;

function again(chart: SizeChart): SizeChart {
  const outcome = safeChartFromData(JSON.parse(JSON.stringify(chartToData(chart))));
  if (!outcome.ok) throw new Error("not read again");
  expect(outcome.issues).toEqual([]);
  return outcome.value;
}

const csv = `# maker: Thimblewick
# cut: men
# harness: fixed
# swappable: hip-belt
size,torso (cm),torso (in),hip belt (cm),capacity (L),weight (g),harness
S/M,38-43,15-17,<98,38,1300,
L,46,18,80+,40,1400,adjustable
XL,51,20,-,,,

belt,hip belt (cm)
S,70-90
`;

test("writes lengths as the chart stated them", () => {
  expect(chartToData(read(csv).chart)).toEqual({
    chart: "Crew pack 40",
    maker: "Thimblewick",
    cut: "men",
    harness: "fixed",
    swappable: ["hip-belt"],
    sizes: [
      {
        size: "S/M",
        "torso-length": { from: "38 cm", to: "43 cm", also: { from: "15 in", to: "17 in" } },
        "hip-belt-girth": { to: "98 cm" },
        capacityLitres: 38,
        massGrams: 1300,
      },
      {
        size: "L",
        "torso-length": { nominal: "46 cm", also: { nominal: "18 in" } },
        "hip-belt-girth": { from: "80 cm" },
        capacityLitres: 40,
        massGrams: 1400,
        harness: "adjustable",
      },
      { size: "XL", "torso-length": { nominal: "51 cm", also: { nominal: "20 in" } } },
    ],
    belts: [{ belt: "S", "hip-belt-girth": { from: "70 cm", to: "90 cm" } }],
  });
});

test("reads back as the same chart", () => {
  const { chart } = read(csv);
  const back = again(chart);
  expect(chartToData(back)).toEqual(chartToData(chart));
  expect(back.sizes.map(({ name, covers }) => [name, covers])).toEqual(
    chart.sizes.map(({ name, covers }) => [name, covers]),
  );
  for (const [position, size] of chart.sizes.entries()) {
    for (const [dimension, range] of Object.entries(size.ranges)) {
      expect(back.sizes[position]?.ranges[dimension as "torso-length"]).toMatchObject({
        interval: range?.interval,
        basis: range?.basis,
      });
    }
  }
});

describe("what the words do not say is written in millimetres", () => {
  const chartOf = (range: object, covers = ["M"]): SizeChart => ({
    chart: "c",
    swappable: [],
    sizes: [{ name: "M", covers, ranges: { "torso-length": range as never } }],
    belts: [],
  });

  test("bounds that were never written", () => {
    const chart = chartOf({ interval: interval(419.1, 482.6), basis: "range", stated: [] });
    expect(chartToData(chart).sizes[0]).toEqual({
      size: "M",
      "torso-length": { from: "419.1 mm", to: "482.6 mm" },
    });
    expect(again(chart).sizes[0]?.ranges["torso-length"]?.interval).toEqual(interval(419.1, 482.6));
  });

  test("bounds that differ from the words", () => {
    const chart = chartOf({ interval: interval(400, 450), basis: "range", stated: ["38-43 cm"] });
    expect(chartToData(chart).sizes[0]).toEqual({
      size: "M",
      "torso-length": { from: "400 mm", to: "450 mm" },
    });
  });

  test("three decimals, which could be thousands", () => {
    const chart = chartOf({ interval: interval(419.125, 482.6), basis: "range", stated: [] });
    expect(again(chart).sizes[0]?.ranges["torso-length"]?.interval.from).toBe(419.125);
  });

  test("the range of a nominal length that the rule would not give", () => {
    const chart = chartOf({
      interval: interval(430, 490),
      basis: "nominal",
      nominalMm: mm(460),
      stated: ["46 cm"],
    });
    expect(chartToData(chart).sizes[0]).toEqual({
      size: "M",
      "torso-length": { nominal: "46 cm", from: "430 mm", to: "490 mm" },
    });
    expect(again(chart).sizes[0]?.ranges["torso-length"]).toMatchObject({
      nominalMm: 460,
      interval: interval(430, 490),
    });
  });

  test("sizes that the name does not tell", () => {
    const chart = chartOf({ interval: interval(400, 450), basis: "range", stated: [] }, ["S", "M"]);
    expect(chartToData(chart).sizes[0]).toMatchObject({ size: "M", covers: ["S", "M"] });
    expect(again(chart).sizes[0]?.covers).toEqual(["S", "M"]);
  });

  test("a lower end at zero is none", () => {
    const chart = chartOf({ interval: interval(0, 450), basis: "range", stated: [] });
    expect(chartToData(chart).sizes[0]).toEqual({ size: "M", "torso-length": { to: "450 mm" } });
  });
});
