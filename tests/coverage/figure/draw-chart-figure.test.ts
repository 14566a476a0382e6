import { chartFigure, drawChartFigure } from "@tapewise/coverage";
import { atLeast, interval } from "@tapewise/intervals";
import { unwrap } from "@tapewise/outcome";
import { referenceMixture, referencePopulation } from "@tapewise/population";
import { expect, test } from "vitest";
import { chartOf, counted, crew, torsoChart } from "../crew.ts";
import { expectPicture } from "./picture.ts";

const draw = (...call: Parameters<typeof chartFigure>): string =>
  drawChartFigure(unwrap(chartFigure(...call)));
const chart = torsoChart({ S: [380, 430], M: [440, 480], L: [470, 510] });

test.each([
  ["one chart", () => draw(chart, crew(), { unit: "cm", survey: { people: 120 } })],
  [
    "a shelf over women and men",
    () =>
      draw([chart, { ...chart, chart: "Teaspoon 35" }], referenceMixture({ women: 1, men: 1 }), {
        unit: "in",
        survey: { people: [990, 2040] },
      }),
  ],
  ["open ends", () => draw(chartOf({ S: { "torso-length": atLeast(430) } }), crew(), { unit: "cm" })],
  ["people who were counted", () => draw(chart, counted([400, 410, 440, 470]), { unit: "cm" })],
  ["nobody served", () => draw(torsoChart({ S: [100, 110] }), crew(), { unit: "cm" })],
])("%s is a picture", (_, picture) => {
  expectPicture(picture(), "chart-over-people");
  expect(picture()).toBe(picture());
});

test("names are not taken for markup", () => {
  const named = {
    ...chartOf({ '<b>&"': { "torso-length": interval(380, 480) } }),
    chart: "Needle & </text>",
  };
  const svg = draw(named, crew(), { unit: "cm" });
  expectPicture(svg, "chart-over-people");
  expect(svg).toContain("&lt;b&gt;&amp;&quot;");
  expect(svg).toContain("Needle &amp; &lt;/text&gt; over the torso length");
});

test("shows bars at their lengths, the unit at the axis, and the shares", () => {
  const svg = draw(chart, crew(), { unit: "cm" });
  expect(svg).toContain("Torso length (cm)");
  expect(svg).toContain(">S: 47.7 %<");
  const { fromMm, toMm } = unwrap(chartFigure(chart, crew(), { unit: "cm" }));
  // The plot lies between 56 and 700.
  const at = (mm: number) => Math.round((56 + (644 * (mm - fromMm)) / (toMm - fromMm)) * 100) / 100;
  expect(svg).toContain(`<rect x="${at(380)}"`);
  expect(svg).toContain(`width="${Math.round((at(430) - at(380)) * 100) / 100}"`);
});

test("two pictures of one page have ids of their own", () => {
  const figure = unwrap(chartFigure(chart, referencePopulation("men"), { unit: "cm" }));
  expectPicture(drawChartFigure(figure, "second"), "second");
});
