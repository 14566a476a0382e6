import { type ChartFigure, chartFigure } from "@tapewise/coverage";
import { atMost, interval } from "@tapewise/intervals";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { referenceMixture } from "@tapewise/population";
import { expect, test } from "vitest";
import { chartOf, crew, torsoChart } from "../crew.ts";

const figure = (...call: Parameters<typeof chartFigure>): ChartFigure => unwrap(chartFigure(...call));
const chart = torsoChart({ S: [380, 430], M: [440, 480] });

test("says in words what is to be seen, with unit, sample, source and caveat", () => {
  const { text } = figure(chart, crew(), { unit: "cm", survey: { people: 120 } });
  expect(text.title).toBe("Doily 45 over the torso length of an invented crew");
  // pnorm(2) - pnorm(0), pnorm(2) - pnorm(0.4): 47.7 % and 32.2 %; together 79.9 %.
  expect(text.description).toContain("Doily 45, size S: 38 to 43 cm, fits 47.7 %.");
  expect(text.description).toContain("Doily 45, size M: 44 to 48 cm, fits 32.2 %.");
  expect(text.description).toContain("At least one size fits 79.9 %; none fits 20.1 %.");
  expect({ ...text, title: "", description: "" }).toEqual({
    title: "",
    description: "",
    unit: "cm",
    sample: "an invented crew, 120 people measured",
    source: "invented",
    caveat: "for tests only",
  });
});

test("is data: curves in mm, bars with their ends, what they cover", () => {
  const { rows, covered, curves, fromMm, toMm, kind } = figure(chart, crew(), { unit: "in" });
  expect(kind).toBe("chart-over-people");
  expect(rows[0]?.sizes.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([
    [380, 430],
    [440, 480],
  ]);
  expect(covered).toEqual([interval(380, 430), interval(440, 480)]);
  const points = curves[0]?.points ?? [];
  expect([points[0]?.[0], points.at(-1)?.[0]]).toEqual([fromMm, toMm]);
  // The area under a density is 1, less a thousandth beyond the ends.
  const step = (toMm - fromMm) / (points.length - 1);
  expect(points.reduce((sum, [, density]) => sum + density * step, 0)).toBeCloseTo(1, 2);
});

test("an open end is left out of the data, and said in words", () => {
  const open = chartOf({
    S: { "torso-length": atMost(430) },
    "2X<L>": { "torso-length": interval(430, 480) },
  });
  const { rows, text } = figure(open, crew(), { unit: "in" });
  expect(rows[0]?.sizes[0]).not.toHaveProperty("fromMm");
  // 430 mm are 16.93 in.
  expect(text.description).toContain("size S: up to 16.93 in");
});

test("a mixture has a curve of all and one of each part, which add up to it", () => {
  const { curves } = figure(chart, referenceMixture({ women: 1, men: 1 }), { unit: "cm" });
  expect(curves.map(({ label }) => label)).toEqual(["adults of unknown sex", "women", "men"]);
  const at = (curve: number) => curves[curve]?.points[60]?.[1] ?? 0;
  expect(at(1) + at(2)).toBeCloseTo(at(0), 14);
});

test("charts beside each other have a row each", () => {
  const other = { ...torsoChart({ L: [450, 500] }), chart: "Teaspoon 35" };
  const { rows, text } = figure([chart, other], crew(), { unit: "cm" });
  expect(rows.map((row) => row.chart)).toEqual(["Doily 45", "Teaspoon 35"]);
  expect(text.title).toMatch(/^2 charts over/);
});

test("what cannot be judged is told, and a wrong unit throws", () => {
  expect(chartFigure(chartOf({}), crew(), { unit: "cm" }).ok).toBe(false);
  // @ts-expect-error figures are in cm or in
  expect(() => chartFigure(chart, crew(), { unit: "mm" })).toThrow(InvalidArgumentError);
});
