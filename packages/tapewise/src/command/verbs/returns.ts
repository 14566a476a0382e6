import { expectedReturns } from "@tapewise/afterwards";
import { type MeasuredBy, measurers, type Tool, tools } from "@tapewise/landmarks";
import { type Command, Option } from "commander";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { print, printJson } from "../io.ts";
import { type LoadedChart, loadCharts } from "../load-charts.ts";
import { type LearnedFromLog, learnFromLog } from "../log/learn-from-log.ts";
import { learnedOffsets } from "../log/learned-offsets.ts";
import { namedByFile } from "../log/named-by-file.ts";
import { readLog } from "../log/read-log.ts";
import { readNoLessThanZero, readOffset, readOffsetUncertainty, wholeNumber } from "../option-numbers.ts";
import { chartOption, jsonOption, requireCharts, requireWords, showUnitOption } from "../options.ts";
import { refuse } from "../refuse.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { type Offsets, returnsLines } from "../report/returns-lines.ts";
import { sampleData, sampleLines } from "../report/sample-lines.ts";
import { type PeopleCut, peopleOption, surveyedPeople } from "../surveyed-people.ts";

interface ReturnsOptions {
  readonly chart?: readonly string[];
  readonly cut?: PeopleCut;
  readonly offset?: number;
  readonly offsetUncertainty?: number;
  readonly log?: string;
  readonly tool?: Tool;
  readonly measuredBy: MeasuredBy;
  readonly readings: number;
  readonly step: number;
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

const EXAMPLES = `
An offset above 0 says that packs come out longer than printed.

Examples:
  tapewise returns --chart chart.csv --cut women
  tapewise returns --chart chart.csv --offset "15 mm"
  tapewise returns --chart chart.csv --log log.ndjson`;

/** `tapewise returns`: what part of packs will come back. */
export function addReturns(program: Command, context: Context): void {
  const returns = program
    .command("returns")
    .summary("tell what part of packs will be exchanged, and what a relabelled chart saves")
    .description(
      "Tells what part of surveyed people, measuring themselves, will exchange their pack, with the chart as printed and with one that says where its ranges sit.",
    )
    .addOption(chartOption())
    .addOption(peopleOption())
    .addOption(
      new Option(
        "--offset <length>",
        'how much longer the torso length comes out than printed, such as "15 mm" or "-1 cm"; at most 20 cm either way',
      ).argParser(readOffset),
    )
    .addOption(
      new Option("--offset-uncertainty <length>", "its standard uncertainty (default: 0)").argParser(
        readOffsetUncertainty,
      ),
    )
    .addOption(
      new Option("--log <file>", "learn the offsets from a log of outcomes").conflicts([
        "offset",
        "offsetUncertainty",
      ]),
    )
    .addOption(new Option("--tool <tool>", "what people measure with").choices(tools))
    .addOption(new Option("--measured-by <who>", "who holds the tool").choices(measurers).default("self"))
    .addOption(
      new Option("--readings <number>", "how many readings they take of each dimension")
        .argParser(wholeNumber(1, 100))
        .default(3),
    )
    .addOption(
      new Option("--step <length>", "what they round readings to")
        .argParser(readNoLessThanZero)
        .default(5, "5 mm"),
    )
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: ReturnsOptions) => runReturns(options, returns, context));
}

async function runReturns(options: ReturnsOptions, command: Command, context: Context): Promise<void> {
  const { io, finish } = context;
  requireWords({ ...options }, command);
  if (options.offsetUncertainty !== undefined && options.offset === undefined) {
    command.error("error: option '--offset-uncertainty' goes with '--offset'");
  }
  const { loaded, issues: chartIssues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (loaded.length === 0) return refuse(chartIssues, options, context);
  const charts = loaded.map(({ chart }) => chart);
  const log = options.log === undefined ? undefined : await readLog(options.log);
  if (log?.ok === false) return refuse(log.issues, options, context);
  const learned = log === undefined ? undefined : learnFromLog(log.value, charts, options.log ?? "");

  const people = surveyedPeople(options.cut, charts);
  const conditions = {
    measuredBy: options.measuredBy,
    ...(options.tool === undefined ? {} : { tool: options.tool }),
  };
  const measuring = { conditions, readings: options.readings, stepMm: options.step };
  const answers = loaded.map((one) => {
    const offsets = offsetsFor(one, options, learned);
    return {
      ...one,
      offsets,
      returns: expectedReturns(one.chart, people.population, { measuring, offsets }),
    };
  });
  const told = [
    ...chartIssues,
    ...(log === undefined ? [] : [...namedByFile(loaded), ...log.value.issues]),
    ...(learned?.issues ?? []),
    ...answers.flatMap(({ returns }) => returns.issues),
  ];
  if (told.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  const done = answers.flatMap(({ chart, offsets, returns }) =>
    returns.ok ? [{ chart: chart.chart, offsets, returns: returns.value }] : [],
  );
  if (options.json === true) {
    return printJson(io.stdout, {
      cut: people.cut,
      ...sampleData(people),
      measuring,
      charts: done.map(({ chart, offsets, returns: { people: _, ...returns } }) => ({
        chart,
        offsets,
        ...returns,
      })),
      issues: told.map(placedIssue),
    });
  }
  if (told.length > 0) await print(io.stderr, ["About the data", ...issueBullets(told), ""]);
  if (done.length === 0) return;
  const unit = options.showUnit ?? "cm";
  await print(io.stdout, [
    ...done.flatMap(({ chart, offsets, returns }) => [...returnsLines(chart, returns, offsets, unit), ""]),
    ...sampleLines(people),
  ]);
}

function offsetsFor(
  { chart }: LoadedChart,
  { offset, offsetUncertainty = 0 }: ReturnsOptions,
  learned: LearnedFromLog | undefined,
): Offsets {
  if (learned !== undefined) return learnedOffsets(chart, learned);
  return offset === undefined ? {} : { "torso-length": { mm: offset, uncertaintyMm: offsetUncertainty } };
}
