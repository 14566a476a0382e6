import type { Issue } from "@tapewise/outcome";
import { auditChart } from "./audit-chart.ts";
import type { ParseChartOptions } from "./chart-options.ts";
import { safeParseChart } from "./parse-chart.ts";

/**
 * All that is wrong or odd about the text of a chart: what {@link safeParseChart} could not read or
 * questions, such as inch and centimetre columns that disagree, and then what {@link auditChart} finds.
 *
 * Issue codes: those of both.
 *
 * @throws {@link InvalidArgumentError} as {@link safeParseChart} does.
 *
 * @example
 * ```ts
 * import { auditChartText } from "@tapewise/charts";
 * const text = "size,torso (cm),torso (in)\nS,38-43,15-19\nM,43-48,17-19";
 * auditChartText(text, { chart: "Crew pack 40" }).map((issue) => issue.code); // => ["chart-statements-disagree"]
 * ```
 */
export function auditChartText(text: string, options: ParseChartOptions = {}): readonly Issue[] {
  const outcome = safeParseChart(text, options);
  return outcome.ok ? [...outcome.issues, ...auditChart(outcome.value, outcome.issues)] : outcome.issues;
}
