import { charts, type outcome } from "tapewise";

/** The text of a chart, and what to call it where it does not say. */
export interface ChartQuestion {
  readonly text: string;
  readonly name: string;
}

/** A chart as it is understood, and all that is wrong or odd about it. */
export interface ChartAnswer {
  readonly text: string;
  readonly chart: charts.SizeChart | undefined;
  /** What could not be read, or was questioned while reading. */
  readonly issues: readonly outcome.Issue[];
  /** What an audit finds in what was read. */
  readonly findings: readonly outcome.Issue[];
  /** The chart in the published JSON form. */
  readonly json: string | undefined;
}

/** Issues beyond these say nothing new, and a page of ten thousand lines helps nobody. */
const MOST_ISSUES = 400;

/** Reads the text of a chart and looks it over. */
export function answerChart({ text, name }: ChartQuestion): ChartAnswer {
  if (text.trim() === "") return { text, chart: undefined, issues: [], findings: [], json: undefined };
  const read = charts.safeParseChart(text, { chart: name });
  const findings = read.ok ? charts.auditChart(read.value, read.issues) : [];
  return {
    text,
    chart: read.ok ? read.value : undefined,
    issues: read.issues.slice(0, MOST_ISSUES),
    findings: findings.slice(0, MOST_ISSUES),
    json: read.ok ? `${JSON.stringify(charts.chartToData(read.value), undefined, 2)}\n` : undefined,
  };
}
