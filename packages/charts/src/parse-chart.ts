import { InvalidArgumentError, type Outcome, unwrap } from "@tapewise/outcome";
import type { ChartFormat, ParseChartOptions } from "./chart-options.ts";
import { safeParseChartCsv } from "./safe-parse-chart-csv.ts";
import { safeParseChartJson } from "./safe-parse-chart-json.ts";
import type { SizeChart } from "./size-chart.ts";

/**
 * Reads a size chart from JSON or CSV text; which of them it is, is seen from the first character
 * unless `format` says so. See {@link safeParseChartJson} and {@link safeParseChartCsv}.
 *
 * @throws {@link InvalidArgumentError} when `format` is neither `json` nor `csv`, or
 * `loneNominalHalfWidth` is not above zero and finite.
 *
 * @example
 * ```ts
 * import { safeParseChart } from "@tapewise/charts";
 * const outcome = safeParseChart("size,torso (in)\nS,15-17\nM,16 1/2-19");
 * outcome.issues.map((issue) => issue.code); // => ["chart-unnamed"]
 * outcome.ok && outcome.value.sizes[0]?.ranges["torso-length"]?.interval.from; // => 381
 * ```
 */
export function safeParseChart(text: string, options: ParseChartOptions = {}): Outcome<SizeChart> {
  const format = options.format ?? detectFormat(text);
  if (format === "json") return safeParseChartJson(text, options);
  if (format === "csv") return safeParseChartCsv(text, options);
  throw new InvalidArgumentError("format", format, '"json" or "csv"');
}

/**
 * As {@link safeParseChart}, for charts that are known to be right. Issues that leave a chart to read are
 * not shown: use the other one where a person wrote the text.
 *
 * @throws {@link IssuesError} with the issues of {@link safeParseChart} when there is no chart.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * parseChart("size,torso (cm)\nS/M,38-46", { chart: "Crew pack 40" }).sizes[0]?.covers; // => ["S", "M"]
 * ```
 */
export function parseChart(text: string, options: ParseChartOptions = {}): SizeChart {
  return unwrap(safeParseChart(text, options));
}

function detectFormat(text: unknown): ChartFormat {
  return typeof text === "string" && /^[\uFEFF\s]*[{[]/.test(text.slice(0, 1000)) ? "json" : "csv";
}
