import {
  afterwardsIssues,
  type ExchangeReason,
  exchangeReasons,
  OUTCOME_VERSION,
  type OutcomeEstimate,
  type OutcomeKind,
  type OutcomeRow,
  outcomeKinds,
} from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import { formBeliefs, type Person } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import { Argument, type Command, Option } from "commander";
import { fileOutcomeStore } from "../../log/file-outcome-store.ts";
import { type AskedPersonOptions, askPerson, personOf } from "../ask-person.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { loadCharts } from "../load-charts.ts";
import { jsonOption, requireWords } from "../options.ts";
import { hasReadings } from "../person-from-options.ts";
import { addPersonOptions, addReadingOptions } from "../person-options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { wrap } from "../text/wrap.ts";

interface AddOptions extends AskedPersonOptions {
  readonly chart?: string;
  readonly size?: string;
  readonly reason?: ExchangeReason;
  readonly exchangedFor?: string;
  readonly pseudonym?: string;
  readonly at?: string;
  readonly id?: string;
  readonly json?: boolean;
}

const EXAMPLES = `
A row holds no reading and no name, only what was believed of the body when the
size was chosen. Without readings it is counted and teaches nothing of the chart.

Examples:
  tapewise log add log.ndjson kept --pseudonym heron --chart chart.csv \\
    --size M --torso-length "44 cm" "43.6 cm"
  tapewise log add log.ndjson exchanged --reason harness-too-long \\
    --exchanged-for S --pseudonym heron --chart chart.csv --size M \\
    --person me.json`;

/** `tapewise log add`: notes down what became of one pack. */
export function addLogAdd(log: Command, context: Context): void {
  const add = log
    .command("add")
    .summary("note down what became of one pack")
    .description("Adds a row to a log: one pack, given to one person, and what became of it.")
    .argument("<file>", "the log; it begins with its first row")
    .addArgument(new Argument("<outcome>", "what became of it").choices(outcomeKinds))
    .addOption(new Option("--chart <file>", "the chart that the size was taken from, CSV or JSON"))
    .addOption(new Option("--size <size>", "the size that was given, as the chart names it"))
    .addOption(new Option("--reason <reason>", "why it was exchanged").choices(exchangeReasons))
    .addOption(new Option("--exchanged-for <size>", "the size that was taken in its place"))
    .addOption(
      new Option(
        "--pseudonym <word>",
        "whom it was given to, by a word that tells others nothing; forgetting goes by it",
      ),
    )
    .addOption(new Option("--at <when>", "when it was known, an ISO 8601 date or time (default: today, UTC)"))
    .addOption(new Option("--id <id>", "a name of the row, so that adding it twice counts once"));
  addPersonOptions(addReadingOptions(add), { isChosenFor: false })
    .optionsGroup("Output:")
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((file: string, outcome: OutcomeKind, options: AddOptions) =>
      runAdd(file, outcome, options, add, context),
    );
}

async function runAdd(
  file: string,
  outcome: OutcomeKind,
  options: AddOptions,
  command: Command,
  context: Context,
): Promise<void> {
  const { io, finish } = context;
  requireWords(options, command);
  const path = options.chart ?? command.error("error: no chart is given; say for example --chart chart.csv");
  const size = options.size ?? command.error("error: no size is given; say for example --size M");
  const refuse = (issues: readonly Issue[]): Promise<void> => {
    finish(issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    return options.json === true
      ? printJson(io.stdout, { issues: issues.map(placedIssue) })
      : print(io.stderr, [...issueBullets(issues, { margin: "" }), "Nothing was added."]);
  };
  const { loaded, issues: chartIssues } = await loadCharts([path]);
  const chart = loaded[0]?.chart;
  if (chart === undefined) return refuse(chartIssues);
  const faults = [size, ...(options.exchangedFor === undefined ? [] : [options.exchangedFor])].flatMap(
    (one) => unknownSize(chart, one),
  );
  if (faults.length > 0) return refuse(faults);

  const isRead = options.person !== undefined || hasReadings(options);
  const asked = isRead ? await askPerson(options, context) : undefined;
  if (asked?.ok === false) return refuse(asked.issues);
  const { person, issues = [] } = asked === undefined ? {} : personOf(asked.value, options.prior);
  if (issues.some(({ severity }) => severity === "error")) return refuse(issues);
  if (person === undefined) {
    await print(
      io.stderr,
      wrap("Note: without readings the row is counted, and teaches nothing of the chart."),
    );
  }

  const added = await fileOutcomeStore(file).append({
    v: OUTCOME_VERSION,
    ...(options.id === undefined ? {} : { id: options.id }),
    at: options.at ?? new Date().toISOString().slice(0, 10),
    ...(options.pseudonym === undefined ? {} : { person: options.pseudonym }),
    product: { ...(chart.maker === undefined ? {} : { maker: chart.maker }), chart: chart.chart },
    size,
    outcome,
    ...(options.reason === undefined ? {} : { reason: options.reason }),
    ...(options.exchangedFor === undefined ? {} : { exchangedFor: options.exchangedFor }),
    ...(person === undefined ? {} : { estimates: estimatesOf(person) }),
  });
  if (!added.ok) return refuse(added.issues);
  const told = [...issues, ...added.issues];
  if (options.json === true) {
    return printJson(io.stdout, { row: added.value, issues: told.map(placedIssue) });
  }
  if (told.length > 0) await print(io.stderr, issueBullets(told, { margin: "" }));
  const why = options.reason === undefined ? "" : ` (${options.reason})`;
  await print(io.stdout, wrap(`Noted in ${file}: ${chart.chart}, ${size}, ${outcome}${why}.`));
}

function unknownSize(chart: SizeChart, size: string): Issue[] {
  const known = chart.sizes.map(({ name }) => name);
  if (known.includes(size)) return [];
  const facts = { chart: chart.chart, known: known.join(", ") };
  return [createIssue(afterwardsIssues, "evidence-size-unknown", { path: ["size"], received: size, facts })];
}

/** What was believed of every dimension that was read, to a millionth of a millimetre. */
function estimatesOf({ estimates, prior }: Person): NonNullable<OutcomeRow["estimates"]> {
  const known: { [D in DimensionId]?: OutcomeEstimate } = {};
  for (const { dimension, meanMm, sdMm, degreesOfFreedom, estimate } of formBeliefs(estimates, prior).list) {
    if (estimate === undefined) continue;
    known[dimension] = {
      mm: rounded(meanMm),
      uncertaintyMm: rounded(sdMm),
      ...(Number.isFinite(degreesOfFreedom) ? { degreesOfFreedom: rounded(degreesOfFreedom) } : {}),
    };
  }
  return known;
}

function rounded(value: number): number {
  return Number(value.toFixed(6));
}
