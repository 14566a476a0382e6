import { chartCoverage, chartFigure, drawChartFigure } from "@tapewise/coverage";
import { type Command, Option } from "commander";
import { issueLine } from "../../batch/issue-line.ts";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { writeTextFile } from "../files.ts";
import { print, printJson } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { chartOption, jsonOption, requireCharts, requireWords, showUnitOption } from "../options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { note, sampleData, sampleLines } from "../report/sample-lines.ts";
import { servedLines, shelfLines } from "../report/served-lines.ts";
import { type PeopleCut, peopleOption, surveyedPeople } from "../surveyed-people.ts";

type ServedOptions = {
  readonly chart?: readonly string[];
  readonly cut?: PeopleCut;
  readonly svg?: string;
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
};

const EXAMPLES = `
Examples:
  tapewise served --chart chart.csv --cut women
  tapewise served --chart a.csv b.json --cut both --svg shelf.svg`;

const BANDS = {
  "parametric-bootstrap": "parametric bootstrap",
  wilson: "Wilson's interval",
} as const;

/** `tapewise served`: what part of people charts fit, and whom they leave out. */
export function addServed(program: Command, context: Context): void {
  const served = program
    .command("served")
    .summary("tell what part of people a chart fits, and whom it leaves out")
    .description(
      "Holds size charts against surveyed people: what part of them each size fits, and whom no size does.",
    )
    .addOption(chartOption())
    .addOption(peopleOption())
    .addOption(new Option("--svg <file>", "also write a picture of the charts over the people"))
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: ServedOptions) => runServed(options, served, context));
}

async function runServed(options: ServedOptions, command: Command, { io, finish }: Context): Promise<void> {
  requireWords(options, command);
  const { loaded, issues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (issues.length > 0) await print(io.stderr, ["About the charts", ...issueBullets(issues), ""]);
  if (loaded.length === 0) {
    return options.json === true ? printJson(io.stdout, issueLine(null, issues)) : undefined;
  }
  const charts = distinctCharts(loaded);
  const people = surveyedPeople(options.cut, charts);
  const { population, survey } = people;
  const unit = options.showUnit ?? "cm";
  const outcome = chartCoverage(charts, population, { survey });
  if (outcome.issues.some((issue) => issue.severity === "error")) finish(EXIT.issues);
  if (options.svg !== undefined) {
    const figure = chartFigure(charts, population, { unit, survey });
    if (figure.ok) {
      const written = await writeTextFile(options.svg, `${drawChartFigure(figure.value)}\n`);
      if (!written.ok) {
        finish(EXIT.misuse);
        await print(io.stderr, issueBullets(written.issues, { margin: "" }));
      }
    }
  }
  const each = charts.flatMap((chart) => {
    const one = charts.length > 1 ? chartCoverage(chart, population, { survey }) : outcome;
    return one.ok ? [{ chart: chart.chart, coverage: one.value }] : [];
  });
  if (options.json === true) {
    if (!outcome.ok) return printJson(io.stdout, issueLine(null, outcome.issues));
    return printJson(io.stdout, {
      cut: people.cut,
      ...sampleData(people),
      charts: each,
      together: outcome.value,
      issues: outcome.issues.map(summariseIssue),
    });
  }
  if (!outcome.ok) return print(io.stderr, issueBullets(outcome.issues, { margin: "" }));
  await print(io.stdout, [
    ...each.flatMap(({ chart, coverage }) => [...servedLines(chart, coverage, unit), ""]),
    ...(each.length > 1 ? [...shelfLines("All charts together", outcome.value), ""] : []),
    ...(outcome.issues.length > 0 ? ["Worth knowing", ...issueBullets(outcome.issues), ""] : []),
    ...sampleLines(people),
    ...note(
      `In brackets: what the size of the survey leaves open, with 95 % confidence (${BANDS[outcome.value.band?.method ?? "wilson"]}). Whether the people you mean are like those surveyed is not in it.`,
    ),
  ]);
}
