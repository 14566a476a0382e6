import { charts, type outcome } from "tapewise";
import type { LookedOver } from "./chart-answer.ts";

/** Audits a chart and writes it in the published JSON form. A file of its own, because few pages need it. */
export async function lookOver(
  chart: charts.SizeChart,
  issues: readonly outcome.Issue[],
): Promise<LookedOver> {
  return {
    findings: charts.auditChart(chart, issues),
    json: `${JSON.stringify(charts.chartToData(chart), undefined, 2)}\n`,
  };
}
