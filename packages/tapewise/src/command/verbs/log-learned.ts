import { changedPicks, correctChart, learnMaker } from "@tapewise/afterwards";
import { type Command, Option } from "commander";
import type { PriorChoice } from "../../person/choose-prior.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { print, printJson } from "../io.ts";
import { loadCharts } from "../load-charts.ts";
import { learnFromLog } from "../log/learn-from-log.ts";
import { readLog } from "../log/read-log.ts";
import {
  chartOption,
  jsonOption,
  priorOption,
  requireCharts,
  requireWords,
  showUnitOption,
} from "../options.ts";
import { type Member, readMembers } from "../read-members.ts";
import { refuse } from "../refuse.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { type LearnedReport, learnedLines } from "../report/learned-lines.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { wrap } from "../text/wrap.ts";

type LearnedOptions = {
  readonly chart?: readonly string[];
  readonly members?: string;
  readonly prior?: Exclude<PriorChoice, "automatic">;
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
};

const EXAMPLES = `
Give the charts of all products of a maker that are in the log: they speak for
each other. With --members it also tells who of them would be given another size.

Example:
  tapewise log learned log.ndjson --chart chart.csv --members crew.ndjson`;

/** `tapewise log learned`: how charts are off, by what became of choices. */
export function addLogLearned(log: Command, context: Context): void {
  const learned = log
    .command("learned")
    .summary("tell how far charts seem off, and whether that changes choices")
    .description(
      "Tells from a log how the ranges of charts sit against what they print: offset and width with the middle 90 %, and from when on that changes choices.",
    )
    .argument("<file>", "the log")
    .addOption(chartOption())
    .addOption(new Option("--members <file>", "people as lines of the batch; - is standard input"))
    .addOption(priorOption())
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((file: string, options: LearnedOptions) => runLearned(file, options, learned, context));
}

async function runLearned(
  file: string,
  options: LearnedOptions,
  command: Command,
  context: Context,
): Promise<void> {
  const { io, finish } = context;
  requireWords(options, command);
  const { loaded, issues: chartIssues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (loaded.length === 0) return refuse(chartIssues, options, context);
  const read = await readLog(file);
  if (!read.ok) return refuse(read.issues, options, context);
  const charts = loaded.map(({ chart }) => chart);
  const { evidence, rows, issues } = learnFromLog(read.value, charts, file);
  const people =
    options.members === undefined
      ? undefined
      : await readMembers(options.members, charts, { prior: options.prior, io });
  if (people?.ok === false) return refuse(people.issues, options, context);
  const told = [...chartIssues, ...read.value.issues, ...issues, ...(people?.value.issues ?? [])];
  if (told.some(({ severity }) => severity === "error")) finish(EXIT.issues);

  const reports = charts.map((chart, place): LearnedReport => {
    const { maker } = chart;
    const correction = correctChart(chart, evidence);
    const judged = judgedBy(people?.value.members ?? [], place);
    return {
      chart: chart.chart,
      ...(maker === undefined ? {} : { maker }),
      rows: rows[place] ?? 0,
      correction,
      ofMaker:
        maker === undefined
          ? []
          : correction.known.map(({ dimension }) => ({
              dimension,
              learned: learnMaker(evidence, maker, dimension),
            })),
      sureProbability: evidence.model.sureProbability,
      ...(judged.length === 0 ? {} : { changed: changedPicks(judged, chart, evidence) }),
    };
  });
  if (options.json === true) {
    return printJson(io.stdout, { charts: reports.map(learnedData), issues: told.map(placedIssue) });
  }
  if (told.length > 0) await print(io.stderr, ["About the data", ...issueBullets(told), ""]);
  const unit = options.showUnit ?? "cm";
  await print(io.stdout, [
    ...reports.flatMap((report) => [...learnedLines(report, unit), ""]),
    ...wrap(
      "Offset: how much longer the packs come out than printed; width: what the span of a range is to be multiplied by; both if the charts are not as printed, which “off with” is the chance of. How far makers are off beforehand is an assumption.",
    ),
  ]);
}

/** Those who could be held against a chart. */
function judgedBy(members: readonly Member[], place: number): readonly Member["answer"]["person"][] {
  return members
    .filter(({ answer }) => answer.packs.some(({ index }) => index === place))
    .map(({ answer }) => answer.person);
}

function learnedData({ correction, ...report }: LearnedReport): unknown {
  const { known, corrections, ranges } = correction;
  return { ...report, known, moved: corrections.map(({ dimension }) => dimension), ranges };
}
