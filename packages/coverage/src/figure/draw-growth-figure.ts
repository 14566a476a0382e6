import { element, label } from "@tapewise/figures";
import { dimensionName } from "@tapewise/landmarks";
import { writeLength, writeShare } from "./figure-text.ts";
import type { GrowthFigure } from "./growth-figure.ts";
import { drawAxis, drawPlot, SHEET } from "./sheet.ts";

const TOP = 66;
const FOOT = 276;
const WIDEST = 64;

/**
 * A growth figure as an SVG picture of bars: self-contained, the same text each time, without fonts or colours of
 * its own.
 *
 * @param id - begins the ids in the picture; give each picture of one page its own
 *
 * @example
 * ```ts
 * import { cutSizes, drawGrowthFigure, growthFigure } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const population = referencePopulation("women");
 * const cuts = cutSizes({ population, dimension: "torso-length", count: 3, goal: "served", spanMm: 40 });
 * drawGrowthFigure(growthFigure(cuts, { population, unit: "cm" })).startsWith("<svg"); // => true
 * ```
 */
export function drawGrowthFigure(figure: GrowthFigure, id = "growth-by-count"): string {
  const { points, measure, text } = figure;
  const isServed = measure === "served";
  const most = isServed ? 1 : Math.max(...points.map(({ value }) => value), Number.MIN_VALUE);
  const each = (SHEET.right - SHEET.left) / points.length;
  const width = Math.min(WIDEST, each * 0.6);
  const middle = (k: number): number => SHEET.left + each * (k + 0.5);
  const heights = points.map(({ value }) => ((FOOT - TOP - 20) * value) / most);
  // With many bars there is no room for a word over each.
  const every = Math.ceil(points.length / 11);
  return drawPlot(text, id, FOOT + 66, [
    ...points.flatMap(({ value }, k) => {
      const height = heights[k] ?? 0;
      const written = isServed ? writeShare(value) : `${writeLength(value, text.unit)} ${text.unit}`;
      return [
        element("rect", {
          x: middle(k) - width / 2,
          y: FOOT - height,
          width,
          height,
          fill: "currentColor",
          "fill-opacity": 0.25,
          stroke: "currentColor",
        }),
        ...(k % every === 0 || k === points.length - 1
          ? [label(middle(k), FOOT - height - 6, written, { "text-anchor": "middle", "font-size": 12 })]
          : []),
      ];
    }),
    ...drawAxis(
      FOOT,
      points.map(({ count }, k) => ({ x: middle(k), text: k % every === 0 ? String(count) : "" })),
      `Number of sizes (cut by ${dimensionName(figure.dimension)}, ${text.unit})`,
    ),
  ]);
}
