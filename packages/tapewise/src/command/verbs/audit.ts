import { auditChart, chartToData } from "@tapewise/charts";
import { formatIssue, type Issue } from "@tapewise/outcome";
import type { Command } from "commander";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { print, printJson } from "../io.ts";
import { type ChartFile, loadCharts } from "../load-charts.ts";
import { jsonOption, showUnitOption } from "../options.ts";
import { chartLines } from "../report/chart-table.ts";
import { findingLines } from "../report/findings.ts";

interface AuditOptions {
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

interface Audited extends ChartFile {
  readonly findings: readonly Issue[];
}

const EXAMPLES = `
Examples:
  tapewise audit chart.csv
  tapewise audit --json chart.csv other.json

The exit status is 1 when a part of a chart cannot be read as it is written.`;

/** `tapewise audit`: a chart as it is understood, and everything that is odd about it. */
export function addAudit(program: Command, context: Context): void {
  program
    .command("audit")
    .summary("look a size chart over for mistakes")
    .description("Prints a size chart as it is understood, and all that is wrong or odd about it.")
    .argument("<charts...>", "size charts, CSV or JSON")
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((files: readonly string[], options: AuditOptions) => runAudit(files, options, context));
}

async function runAudit(
  paths: readonly string[],
  options: AuditOptions,
  { io, finish }: Context,
): Promise<void> {
  const { files, issues, status } = await loadCharts(paths);
  finish(status);
  const audited = files.map(
    (one): Audited => ({
      ...one,
      findings: one.chart === undefined ? one.issues : [...one.issues, ...auditChart(one.chart, one.issues)],
    }),
  );
  if (audited.some(({ findings }) => findings.some((finding) => finding.severity === "error")))
    finish(EXIT.issues);

  const told = new Set(files.flatMap((file) => (file.chart === undefined ? [] : file.issues)));
  const unreadable = issues.filter((issue) => !told.has(issue));
  await print(io.stderr, unreadable.map(formatIssue));
  if (options.json === true) return printJson(io.stdout, audited.map(auditData));
  for (const { file, chart, findings } of audited) {
    if (chart === undefined) continue;
    await print(io.stdout, [...chartLines(chart, file, options.showUnit), ...findingLines(findings), ""]);
  }
}

/** What was found in a file, for programs; without a chart where there is none to show. */
function auditData({ file, chart, findings }: Audited): unknown {
  return {
    file,
    ...(chart === undefined ? {} : { chart: chartToData(chart) }),
    findings: findings.map((finding) => ({
      ...summariseIssue(finding),
      ...(finding.place === undefined ? {} : { place: finding.place }),
    })),
  };
}
