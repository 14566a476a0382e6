import type { SizeChart } from "@tapewise/charts";

/** Whether a chart asks for the stature itself, and not only a prior does. */
export function sizesByStature(chart: SizeChart): boolean {
  return chart.sizes.some((size) => size.ranges.stature !== undefined);
}
