import { dimensionName } from "@tapewise/landmarks";
import type { ChartDimension } from "./size-chart.ts";

/**
 * What a column of a chart measures, as it is read aloud.
 *
 * @example
 * ```ts
 * import { speakDimension } from "@tapewise/charts";
 * speakDimension("hip-belt-girth"); // => "hip-belt girth"
 * speakDimension("unstated-hip-girth"); // => "hip girth"
 * ```
 */
export function speakDimension(dimension: ChartDimension): string {
  return dimension === "unstated-hip-girth" ? "hip girth" : dimensionName(dimension);
}
