import { charts, type outcome } from "tapewise";

/** The text of a chart, and what to call it where it does not say. */
export interface ChartQuestion {
  readonly text: string;
  readonly name: string;
  /** Whether the chart is looked over and given back as JSON too. */
  readonly isLookedOver: boolean;
}

/** What is told of a chart beyond reading it. */
export interface LookedOver {
  readonly findings: readonly outcome.Issue[];
  /** The chart in the published JSON form. */
  readonly json: string;
}

/** Looks a chart over that was read with these issues. */
type LookOver = (chart: charts.SizeChart, issues: readonly outcome.Issue[]) => Promise<LookedOver>;

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
  /** What could not be read, then what was questioned, then what looking it over finds; the first of them. */
  readonly told: readonly ChartTold[];
  readonly wrong: number;
  readonly odd: number;
  /** The chart in the published JSON form, all of it, where it was looked over. */
  readonly json: string | undefined;
}

/** A page of ten thousand lines helps nobody: more issues and sizes than these are counted and not shown. */
export const MOST_TOLD = 200;
const MOST_SIZES = 300;

/** Reads the text of a chart, and looks it over with what is given for that. The parser of JSON is loaded for JSON only. */
export async function answerChart({ text, name }: ChartQuestion, lookOver?: LookOver): Promise<ChartAnswer> {
  if (text.trim() === "")
    return { text, chart: undefined, sizes: 0, told: [], wrong: 0, odd: 0, json: undefined };
  const read = isJson(text)
    ? (await import("./chart-from-json.ts")).chartFromJson(text, name)
    : charts.safeParseChartCsv(text, { chart: name });
  const look = read.ok ? await lookOver?.(read.value, read.issues) : undefined;
  const found = [...read.issues, ...(look?.findings ?? [])];
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
    json: look?.json,
  };
}

function cut(chart: charts.SizeChart): charts.SizeChart {
  return { ...chart, sizes: chart.sizes.slice(0, MOST_SIZES), belts: chart.belts.slice(0, MOST_SIZES) };
}

/** As the library sees it: by the first character. */
function isJson(text: string): boolean {
  return /^[\uFEFF\s]*[{[]/.test(text.slice(0, 1000));
}

/** Finds the line that a size is named in: what an audit finds has no place in the text, but a size. */
function sizeLines(text: string): (issue: outcome.Issue) => number | undefined {
  const isNested = isJson(text);
  const lines = new Map<string, number>();
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    const names = isNested
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
