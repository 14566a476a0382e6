import { dimensionName } from "@tapewise/landmarks";
import { type AverageSpread, safeReadReadings } from "@tapewise/measurement";
import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import { type LengthReading, type LengthUnit, lengthUnits } from "@tapewise/units";
import { type Command, Option } from "commander";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import { tapewiseIssues } from "../../issues.ts";
import type { Context } from "../context.ts";
import { readTextFile, readTextInput } from "../files.ts";
import { type Io, print, printJson } from "../io.ts";
import { joinReadings } from "../join-readings.ts";
import { type AverageLesson, type AverageOptions, drawnLesson, ownLesson } from "../lesson/make-lesson.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { readOffset, wholeNumber } from "../option-numbers.ts";
import { chartOption, jsonOption, requireWords, showUnitOption } from "../options.ts";
import { boundsOf } from "../planning/make-plan.ts";
import { addErrorOptions } from "../reading-error.ts";
import { refuse } from "../refuse.ts";
import { averageLines } from "../report/average-lines.ts";
import { issueBullets } from "../report/issue-bullets.ts";

interface AverageVerbOptions extends AverageOptions {
  readonly own?: string;
  readonly unit?: LengthUnit;
  readonly chart?: readonly string[];
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

const EXAMPLES = `
Examples:
  tapewise average --length "43.6 cm" --measured-by self --seed 7
  tapewise average --length "43.6 cm" --bias "8 mm" --chart chart.csv
  tapewise average --length "43.6 cm" --slips --readings 15
  tapewise average --own class.txt --length "43.6 cm"
  tapewise average "43.2 cm" "44.1 cm" "43.6 cm" "42.9 cm"

Without readings of your own they are drawn: a person of a stated length, whose
readings err as the options say. A file of your own has one reading a line.`;

/** `tapewise average`: what averaging does, for a class. */
export function addAverage(program: Command, context: Context): void {
  const average = program
    .command("average")
    .summary("show what averaging readings does, and what it does not")
    .description(
      "A lesson: the running mean of a series with its band, what the mean of 1, 2, 3 ... readings is worth over many series, how often a wrong size comes of it, and the median beside the mean.",
    )
    .argument("[readings...]", "readings of your own, all of one person")
    .addOption(new Option("--own <file>", "readings of your own, one a line; - is standard input"))
    .addOption(new Option("--unit <unit>", "the unit of readings that name none").choices(lengthUnits))
    .optionsGroup("The person and the error:");
  addErrorOptions(average, "the true length; for your own readings, what they are held against")
    .addOption(
      new Option("--bias <length>", 'what is added to every reading of everybody, such as "8 mm" or "-8 mm"')
        .argParser(readOffset)
        .default(0, "none"),
    )
    .addOption(
      new Option("--slips", "one reading in ten slips by 2 cm to a wrong point, either way (an assumption)"),
    )
    .optionsGroup("The lesson:")
    .addOption(
      new Option("--readings <number>", "readings of a series").argParser(wholeNumber(2, 100)).default(10),
    )
    .addOption(
      new Option("--runs <number>", "how many series are drawn")
        .argParser(wholeNumber(2, 100_000))
        .default(2000),
    )
    .addOption(
      new Option("--seed <number>", "seed of the random numbers; the same seed draws the same")
        .argParser(wholeNumber(0, Number.MAX_SAFE_INTEGER))
        .default(1),
    )
    .addOption(chartOption())
    .optionsGroup("Output:")
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((words: readonly string[], options: AverageVerbOptions) =>
      runAverage(words, options, average, context),
    );
}

async function runAverage(
  words: readonly string[],
  options: AverageVerbOptions,
  command: Command,
  context: Context,
): Promise<void> {
  const { io, finish } = context;
  requireWords({ ...options }, command);
  if (words.length > 0 && options.own !== undefined) {
    command.error("error: readings stand on the command line and in --own; leave one of them out");
  }
  const charts = await loadCharts(options.chart ?? []);
  finish(charts.status);
  const issues: Issue[] = [...charts.issues];
  const [chart, ...more] = distinctCharts(charts.loaded);
  if (more.length > 0) command.error("error: the lesson picks sizes from one chart; give one");
  const sizes = chart === undefined ? undefined : boundsOf(chart, options.dimension);
  if (chart !== undefined && sizes?.length === 0) {
    issues.push(
      createIssue(tapewiseIssues, "plan-chart-without-dimension", {
        received: chart.chart,
        facts: { dimension: dimensionName(options.dimension) },
      }),
    );
  }
  const isOwn = words.length > 0 || options.own !== undefined;
  const own = isOwn ? await ownReadings(words, options, io) : undefined;
  issues.push(...(own?.issues ?? []));
  if (issues.some(({ severity }) => severity === "error")) {
    return refuse(issues, options, context);
  }
  const picking = sizes === undefined ? {} : { sizes, chart: chart?.chart };
  const lesson =
    own?.ok === true
      ? ownLesson(own.value, options, picking, command)
      : drawnLesson(options, picking, command);
  if (issues.length > 0) await print(io.stderr, issueBullets(issues, { margin: "" }));
  if (options.json === true) return printJson(io.stdout, lessonData(lesson, issues));
  const inches = own?.ok === true && own.value.every(({ unit }) => unit === "in" || unit === "ft");
  await print(io.stdout, averageLines(lesson, options.showUnit ?? (inches ? "in" : "cm")));
}

/** Readings of the command line, or one a line of a file, where an issue has its line. */
async function ownReadings(
  words: readonly string[],
  { dimension, unit, own }: AverageVerbOptions,
  io: Io,
): Promise<Outcome<readonly LengthReading[]>> {
  const options = unit === undefined ? {} : { unit };
  if (own === undefined) return safeReadReadings(dimension, joinReadings(words), options);
  const text = own === "-" ? await readTextInput(io) : await readTextFile(own);
  if (!text.ok) return text;
  const lines = text.value
    .replace(/^\uFEFF/, "")
    .split(/\r\n|\n|\r/)
    .map((line, k) => ({ text: line.trim(), line: k + 1 }))
    .filter((line) => line.text !== "");
  const outcome = safeReadReadings(
    dimension,
    lines.map((line) => line.text),
    options,
  );
  const placed = (issue: Issue): Issue => {
    const line = typeof issue.path[0] === "number" ? lines[issue.path[0]]?.line : undefined;
    return line === undefined ? issue : { ...issue, place: { file: own, line, column: 1 } };
  };
  if (outcome.ok) return success(outcome.value, outcome.issues.map(placed));
  const [first, ...rest] = outcome.issues;
  return failure([placed(first), ...rest.map(placed)]);
}

/** A lesson for programs; the results of single series are left out. */
function lessonData(lesson: AverageLesson, issues: readonly Issue[]): unknown {
  const bare = ({ valuesMm: _, ...spread }: AverageSpread): unknown => spread;
  return {
    ...lesson,
    results: lesson.results.map(({ count, mean, median }) => ({
      count,
      mean: bare(mean),
      median: bare(median),
    })),
    issues: issues.map(summariseIssue),
  };
}
