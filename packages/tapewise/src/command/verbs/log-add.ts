import {
  afterwardsIssues,
  type ExchangeReason,
  exchangeReasons,
  OUTCOME_VERSION,
  type OutcomeKind,
  type OutcomeRow,
  outcomeKinds,
  safeOutcomeRow,
} from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import { createIssue, type Issue } from "@tapewise/outcome";
import { Argument, type Command, Option } from "commander";
import { fileOutcomeStore } from "../../log/file-outcome-store.ts";
import { type AskedPersonOptions, askPerson, personOf } from "../ask-person.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { loadCharts } from "../load-charts.ts";
import { estimatesOf } from "../log/estimates-of.ts";
import { findId, isSame } from "../log/find-id.ts";
import { questionExchange } from "../log/question-exchange.ts";
import { requireLog } from "../log/require-log.ts";
import { jsonOption, requireWords } from "../options.ts";
import { hasReadings } from "../person-from-options.ts";
import { addPersonOptions, addReadingOptions } from "../person-options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { cleanWord } from "../text/clean.ts";
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
        "whom it was given to, by a word that tells others nothing; forgetting goes by it (default: the id in the person's file)",
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
  const log = await requireLog(file);
  // A log begins with its first row.
  if (!log.ok && log.issues.some(({ code }) => code !== "file-missing")) return refuse(log.issues);
  const { loaded, issues: chartIssues } = await loadCharts([path]);
  const chart = loaded[0]?.chart;
  if (chart === undefined) return refuse(chartIssues);
  const faults = [size, ...(options.exchangedFor === undefined ? [] : [options.exchangedFor])].flatMap(
    (one) => unknownSize(chart, one),
  );
  if (faults.length > 0) return refuse(faults);

  const isRead = options.person !== undefined || hasReadings(options);
  const asked = isRead ? await askPerson({ ...options, id: undefined }, context) : undefined;
  if (asked?.ok === false) return refuse(asked.issues);
  const { person, issues = [] } = asked === undefined ? {} : personOf(asked.value, options.prior);
  if (issues.some(({ severity }) => severity === "error")) return refuse(issues);
  if (person === undefined) {
    await print(
      io.stderr,
      wrap("Note: without readings the row is counted, and teaches nothing of the chart."),
    );
  }

  const pseudonym = options.pseudonym ?? (asked === undefined ? undefined : idOf(asked.value));
  if (pseudonym === undefined) {
    await print(
      io.stderr,
      wrap("Note: without a pseudonym the row cannot be found again when somebody asks to be forgotten."),
    );
  }
  const row: OutcomeRow = {
    v: OUTCOME_VERSION,
    ...(options.id === undefined ? {} : { id: options.id }),
    at: options.at ?? new Date().toISOString().slice(0, 10),
    ...(pseudonym === undefined ? {} : { person: pseudonym }),
    product: { ...(chart.maker === undefined ? {} : { maker: chart.maker }), chart: chart.chart },
    size,
    outcome,
    ...(options.reason === undefined ? {} : { reason: options.reason }),
    ...(options.exchangedFor === undefined ? {} : { exchangedFor: options.exchangedFor }),
    ...(person === undefined ? {} : { estimates: estimatesOf(person) }),
  };
  const checked = safeOutcomeRow(row);
  const slips = checked.issues.filter(({ code }) => code === "outcome-estimate-implausible");
  if (!checked.ok || slips.length > 0) return refuse(slips.length > 0 ? slips.map(asError) : checked.issues);
  const before = log.ok ? findId(log.value, options.id) : undefined;
  const isAgain =
    before !== undefined &&
    isSame(before.row, { ...row, at: options.at === undefined ? before.row.at : row.at });
  if (before !== undefined && !isAgain) {
    const details = { path: ["id"], received: row.id, place: { file, line: before.line, column: 1 } };
    return refuse([asError(createIssue(afterwardsIssues, "outcome-id-repeated", details))]);
  }
  // A row that is there already is as good as added: whoever cannot tell whether it came through asks again.
  const added = isAgain ? checked : await fileOutcomeStore(file).append(row);
  if (!added.ok) return refuse(added.issues);
  const told = [...issues, ...(outcome === "exchanged" ? questionExchange(chart, row) : []), ...added.issues];
  if (options.json === true) {
    const kept = isAgain ? before.row : added.value;
    return printJson(io.stdout, { row: kept, isNew: !isAgain, issues: told.map(placedIssue) });
  }
  if (told.length > 0) await print(io.stderr, issueBullets(told, { margin: "" }));
  if (isAgain) {
    const where = `line ${before.line} of ${cleanWord(file)}`;
    return print(io.stdout, wrap(`Already there: ${where} is this row. Nothing was added.`));
  }
  const why = options.reason === undefined ? "" : ` (${options.reason})`;
  const whose =
    options.pseudonym === undefined && pseudonym !== undefined
      ? ` It is kept under the id in the person's file, “${cleanWord(pseudonym)}”; forgetting goes by that.`
      : "";
  await print(io.stdout, wrap(`Noted in ${file}: ${chart.chart}, ${size}, ${outcome}${why}.${whose}`));
}

/** What keeps a row from being added here, though a row that came from elsewhere is only questioned for it. */
function asError(issue: Issue): Issue {
  return { ...issue, severity: "error" };
}

/** The id that a person's file gives them. */
function idOf(value: unknown): string | undefined {
  if (typeof value !== "object" || value === null || !("id" in value)) return undefined;
  const { id } = value;
  return typeof id === "string" || typeof id === "number" ? String(id) : undefined;
}

function unknownSize(chart: SizeChart, size: string): Issue[] {
  const known = chart.sizes.map(({ name }) => name);
  if (known.includes(size)) return [];
  const facts = { chart: chart.chart, known: known.join(", ") };
  return [createIssue(afterwardsIssues, "evidence-size-unknown", { path: ["size"], received: size, facts })];
}
