/// <reference types="node" />
import { readFile } from "node:fs/promises";
import { basename, extname } from "node:path";
import { charts, outcome, tapewiseIssues } from "tapewise";

/** Charts that were asked for, and what is wrong with their files. */
export interface LoadedCharts {
  readonly charts: readonly charts.SizeChart[];
  readonly issues: readonly outcome.Issue[];
  /** Whether every file gave a chart. */
  readonly isWhole: boolean;
}

/** Reads chart files as `tapewise batch` does: charts of one name are each named with their file. */
export async function loadCharts(files: readonly string[]): Promise<LoadedCharts> {
  const loaded: { readonly file: string; readonly chart: charts.SizeChart }[] = [];
  const issues: outcome.Issue[] = [];
  for (const file of files) {
    const read = await readChart(file);
    issues.push(...read.issues);
    if (read.ok) loaded.push({ file, chart: read.value });
  }
  const names = loaded.map(({ chart }) => chart.chart);
  return {
    charts: loaded.map(({ file, chart }) =>
      names.filter((name) => name === chart.chart).length > 1
        ? { ...chart, chart: `${chart.chart} (${file})` }
        : chart,
    ),
    issues,
    isWhole: loaded.length === files.length,
  };
}

async function readChart(file: string): Promise<outcome.Outcome<charts.SizeChart>> {
  const ending = extname(file).toLowerCase();
  const format = ending === ".json" ? "json" : ending === ".csv" ? "csv" : undefined;
  try {
    return charts.safeParseChart(await readFile(file, "utf8"), {
      file,
      chart: basename(file, extname(file)),
      ...(format === undefined ? {} : { format }),
    });
  } catch (error) {
    const reason = error instanceof Error && "code" in error ? String(error.code) : "unknown reason";
    const code = reason === "ENOENT" ? "file-missing" : "file-unreadable";
    return outcome.failure([
      outcome.createIssue(tapewiseIssues, code, { received: file, facts: { reason } }),
    ]);
  }
}
