import { basename, extname } from "node:path";
import { type ParseChartOptions, type SizeChart, safeParseChart } from "@tapewise/charts";
import { createIssue, type Issue } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { EXIT, type ExitStatus, graver } from "./exit-status.ts";
import { pathCodes, readTextFile } from "./files.ts";

/** A chart file as it was found, with the issues of its own. */
export interface ChartFile {
  readonly file: string;
  /** Absent when nothing of it could be read. */
  readonly chart?: SizeChart;
  readonly issues: readonly Issue[];
}

/** A chart file that could be read. */
export interface LoadedChart extends ChartFile {
  readonly chart: SizeChart;
  /** Whether the chart states no name and is called after its file. */
  readonly isNamedByFile: boolean;
}

/** Chart files, with what could not be read of them. */
export interface LoadedCharts {
  /** Every file, in the order in which they were named. */
  readonly files: readonly ChartFile[];
  /** Those of them that gave a chart. */
  readonly loaded: readonly LoadedChart[];
  /** Issues of every file, those of files that gave no chart included. */
  readonly issues: readonly Issue[];
  readonly status: ExitStatus;
}

/** Reads chart files in order. A chart that does not name itself is named after its file. */
export async function loadCharts(paths: readonly string[]): Promise<LoadedCharts> {
  const files: ChartFile[] = [];
  const loaded: LoadedChart[] = [];
  const issues: Issue[] = [];
  let status: ExitStatus = EXIT.answer;
  for (const file of paths) {
    const text = await readTextFile(file);
    const outcome = text.ok ? safeParseChart(text.value, { ...optionsFor(file), ...nameOf(file) }) : text;
    // A file that cannot be opened names itself in its issue; what is in a file is told with its place.
    issues.push(
      ...outcome.issues.map((issue) => (text.ok && issue.place === undefined ? inFile(issue, file) : issue)),
    );
    if (outcome.ok) {
      const isNamedByFile = text.ok && statesNoName(text.value, file);
      const one: LoadedChart = { file, chart: outcome.value, issues: outcome.issues, isNamedByFile };
      files.push(one);
      loaded.push(one);
    } else files.push({ file, issues: outcome.issues });
    if (outcome.issues.some((issue) => issue.severity === "error")) status = graver(status, EXIT.issues);
    if (outcome.issues.some((issue) => pathCodes.includes(issue.code))) status = graver(status, EXIT.misuse);
  }
  return { files, loaded, issues: [...issues, ...aboutNames(loaded)], status };
}

function optionsFor(file: string): ParseChartOptions {
  const extension = extname(file).toLowerCase();
  const format = extension === ".json" ? "json" : extension === ".csv" ? "csv" : undefined;
  return { file, ...(format === undefined ? {} : { format }) };
}

function nameOf(file: string): Pick<ParseChartOptions, "chart"> {
  return { chart: basename(file, extname(file)) };
}

/** Whether a chart is without a name unless it is given one. */
function statesNoName(text: string, file: string): boolean {
  return safeParseChart(text, optionsFor(file)).issues.some(({ code }) => code === "chart-unnamed");
}

/** The charts to hold people against; where several bear one name, each is named with its file. */
export function distinctCharts(loaded: readonly LoadedChart[]): readonly SizeChart[] {
  const repeated = repeatedNames(loaded);
  return loaded.map(({ file, chart }) =>
    repeated.has(chart.chart) ? { ...chart, chart: `${chart.chart} (${file})` } : chart,
  );
}

function repeatedNames(loaded: readonly LoadedChart[]): ReadonlySet<string> {
  const names = loaded.map(({ chart }) => chart.chart);
  return new Set(names.filter((name, index) => names.indexOf(name) !== index));
}

function aboutNames(loaded: readonly LoadedChart[]): Issue[] {
  return [...repeatedNames(loaded)].map((received) =>
    createIssue(tapewiseIssues, "batch-chart-name-repeated", { received }),
  );
}

function inFile(issue: Issue, file: string): Issue {
  return { ...issue, place: { file, line: 1, column: 1 } };
}
