import { cutSizes, drawGrowthFigure, growthFigure } from "@tapewise/coverage";
import { expect, test } from "vitest";
import { crew } from "../crew.ts";
import { expectPicture } from "./picture.ts";

const population = crew();
const dimension = "torso-length";

test.each([
  ["people served", cutSizes({ population, dimension, count: 4, goal: "served", spanMm: 30, stepMm: 5 })],
  ["expected distances", cutSizes({ population, dimension, count: 4, goal: "misfit", stepMm: 5 })],
  ["many bars", cutSizes({ population, dimension, count: 20, goal: "misfit", stepMm: 10 })],
])("%s are a picture", (_, cuts) => {
  const figure = growthFigure(cuts, { population, unit: "cm", survey: { people: 120 } });
  const svg = drawGrowthFigure(figure, "cuts");
  expectPicture(svg, "cuts");
  expect(svg).toBe(drawGrowthFigure(figure, "cuts"));
  expect(svg).toContain("Number of sizes (cut by torso length, cm)");
});

test("a bar is as high as its share of the plot", () => {
  const cuts = cutSizes({ population, dimension, count: 1, goal: "served", spanMm: 100 });
  const svg = drawGrowthFigure(growthFigure(cuts, { population, unit: "cm" }));
  // 190 units stand for everybody: 0.9545 of them (2 pnorm(2) - 1) are 181.35.
  expect(svg).toContain('height="181.35"');
  expect(svg).toContain(">95.4 %<");
});
