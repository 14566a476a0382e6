import { charts, type outcome } from "tapewise";

/** Reads a chart from JSON. A file of its own: the parser that knows places is loaded for JSON only. */
export function chartFromJson(text: string, name: string): outcome.Outcome<charts.SizeChart> {
  return charts.safeParseChartJson(text, { chart: name });
}
