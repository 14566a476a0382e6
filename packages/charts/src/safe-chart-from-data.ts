import type { Outcome } from "@tapewise/outcome";
import type { ChartOptions } from "./chart-options.ts";
import { MOST_SIZES } from "./data.ts";
import { finishChart } from "./finish-chart.ts";
import { readJsonChart } from "./read-json-chart.ts";
import type { SizeChart } from "./size-chart.ts";
import { sourceOfData } from "./source-of-data.ts";

/**
 * Reads a size chart from an object in memory, of the same form as the JSON: what `JSON.parse` gives, or
 * what a database holds. Any value is looked at safely; properties that are `undefined` are absent.
 *
 * Issue codes: those of {@link safeParseChartJson} that are about a chart's parts. Issues have a path, but
 * no line.
 *
 * @throws {@link InvalidArgumentError} when `loneNominalHalfWidth` is not above zero and finite.
 *
 * @example
 * ```ts
 * import { safeChartFromData } from "@tapewise/charts";
 * const outcome = safeChartFromData({ chart: "Crew pack 40", sizes: [{ size: "M", "torso-length": "43-48 cm" }] });
 * outcome.ok && outcome.value.sizes[0]?.ranges["torso-length"]?.interval.from; // => 430
 * safeChartFromData(null).issues.map((issue) => issue.code); // => ["chart-value-kind", "chart-no-sizes"]
 * ```
 */
export function safeChartFromData(data: unknown, options: ChartOptions = {}): Outcome<SizeChart> {
  return finishChart(readJsonChart(sourceOfData(data, MOST_SIZES)), options);
}
