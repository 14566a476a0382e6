import { charts, type outcome } from "tapewise";

/** The text of a chart, and what to call it where it does not say. */
export interface ChartQuestion {
  readonly text: string;
  readonly name: string;
}

/** An issue, and the line of the text that it is about, from 1. */
export interface ChartTold {
  readonly issue: outcome.Issue;
  readonly line: number | undefined;
}

/** A chart as it is understood, and all that is wrong or odd about it. */
export interface ChartAnswer {
  readonly text: string;
  /** The chart, with as many of its sizes as a page can show. */
  readonly chart: charts.SizeChart | undefined;
  /** How many sizes the whole chart has. */
  readonly sizes: number;
  /** What could not be read, then what was questioned, then what an audit finds; the first of them. */
  readonly told: readonly ChartTold[];
  readonly wrong: number;
  readonly odd: number;
  /** The chart in the published JSON form, all of it. */
  readonly json: string | undefined;
}

/** A page of ten thousand lines helps nobody: more issues and sizes than these are counted and not shown. */
export const MOST_TOLD = 200;
export const MOST_SIZES = 300;

/** Reads the text of a chart and looks it over. */
export function answerChart({ text, name }: ChartQuestion): ChartAnswer {
  if (text.trim() === "")
    return { text, chart: undefined, sizes: 0, told: [], wrong: 0, odd: 0, json: undefined };
  const read = charts.safeParseChart(text, { chart: name });
  const found = [...read.issues, ...(read.ok ? charts.auditChart(read.value, read.issues) : [])];
  const wrong = found.filter(({ severity }) => severity === "error");
  const odd = found.filter(({ severity }) => severity === "warning");
  const shown = [...wrong, ...odd].slice(0, MOST_TOLD);
  const lineOf = sizeLines(text);
  return {
    text,
    chart: read.ok ? cut(read.value) : undefined,
    sizes: read.ok ? read.value.sizes.length : 0,
    told: shown.map((issue) => ({ issue, line: issue.place?.line ?? lineOf(issue) })),
    wrong: wrong.length,
    odd: odd.length,
    json: read.ok ? `${JSON.stringify(charts.chartToData(read.value), undefined, 2)}\n` : undefined,
  };
}

function cut(chart: charts.SizeChart): charts.SizeChart {
  return { ...chart, sizes: chart.sizes.slice(0, MOST_SIZES), belts: chart.belts.slice(0, MOST_SIZES) };
}

/** Finds the line that a size is named in: what an audit finds has no place in the text, but a size. */
function sizeLines(text: string): (issue: outcome.Issue) => number | undefined {
  const isJson = /^[\uFEFF\s]*[{[]/.test(text.slice(0, 1000));
  const lines = new Map<string, number>();
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    const names = isJson
      ? [...line.matchAll(/"(?:size|belt)"\s*:\s*"([^"\\]+)"/g)].map(([, name]) => name)
      : [/^\s*"?([^",;\t]*)"?\s*[,;\t]/.exec(line)?.[1]?.trim()];
    for (const name of names) {
      if (name !== undefined && name !== "" && !lines.has(name)) lines.set(name, index + 1);
    }
  }
  return ({ path }) => {
    const [table, size] = path;
    return table === "sizes" || table === "belts" ? lines.get(String(size)) : undefined;
  };
}
