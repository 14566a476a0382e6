import { inOrder } from "./in-order.ts";
import type { ChartDimension, Size, SizeChart } from "./size-chart.ts";

/**
 * The sizes of a chart that state a dimension, from the smallest to the largest: by where their ranges
 * begin, then where they end. The order of the chart and the names of the sizes play no part.
 *
 * @example
 * ```ts
 * import { parseChart, sizesInOrder } from "@tapewise/charts";
 * const chart = parseChart("size,torso (cm)\nL,47-52\nS,38-43\nM,42-48", { chart: "Crew pack 40" });
 * sizesInOrder(chart, "torso-length").map((size) => size.name); // => ["S", "M", "L"]
 * sizesInOrder(chart, "stature"); // => []
 * ```
 */
export function sizesInOrder(chart: SizeChart, dimension: ChartDimension): readonly Size[] {
  return inOrder(chart.sizes, dimension).map(({ size }) => size);
}
