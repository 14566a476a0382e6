import { type LendingPolicy, lendingTable, lendPacks } from "@tapewise/afterwards";
import { nextStepTexts } from "@tapewise/fit";
import { type Command, InvalidArgumentError, Option } from "commander";
import type { PriorChoice } from "../../person/choose-prior.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { readTextFile } from "../files.ts";
import { print, printJson } from "../io.ts";
import { readShelf } from "../lend/read-shelf.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { correctCharts, doubtAfterLog, lendByLog } from "../log/choose-by-log.ts";
import { learnFromLog } from "../log/learn-from-log.ts";
import { namedByFile } from "../log/named-by-file.ts";
import { readLog } from "../log/read-log.ts";
import { chartOption, jsonOption, priorOption, requireCharts, requireWords } from "../options.ts";
import { readMembers } from "../read-members.ts";
import { refuse } from "../refuse.ts";
import { lendByLogLines } from "../report/choice-by-log-lines.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { lendingLines } from "../report/lending-lines.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { wrap } from "../text/wrap.ts";

type LendOptions = {
  readonly members?: string;
  readonly chart?: readonly string[];
  readonly shelf?: string;
  readonly goal: LendingPolicy["goal"];
  readonly leastChance: number;
  readonly log?: string;
  readonly prior?: Exclude<PriorChoice, "automatic">;
  readonly json?: boolean;
};

const EXAMPLES = `
The shelf is a table with the columns chart, size and count:

  chart,size,count
  Thimblewick Doily 45,M,2

Nobody goes without who could be served. Whoever has an error in their line goes
without, and why is told. Charts are taken as printed unless there is a --log.

Whoever has pain or numbness, an injury, a pregnancy or is growing belongs to a
professional fitter, and out of the list.

Example:
  tapewise lend --members crew.ndjson --chart a.csv b.json --shelf shelf.csv`;

/** Assumption: below it a pack is as likely not to fit as to fit. */
const LEAST_CHANCE = 0.5;
/** The most that going without may cost. */
const LARGEST_COST = 10_000;

/** `tapewise lend`: who of a crew is lent which pack of a shelf. */
export function addLend(program: Command, context: Context): void {
  const lend = program
    .command("lend")
    .summary("tell whom to lend which pack of a limited shelf")
    .description(
      "Lends the packs of a shelf to the members of a crew so that the whole fits as well as it can, and tells who goes without and what to get next.",
    )
    .addOption(new Option("--members <file>", "people as lines of the batch; - is standard input"))
    .addOption(chartOption())
    .addOption(new Option("--shelf <file>", "how many of each size there are, CSV"))
    .addOption(
      new Option(
        "--goal <goal>",
        "chance: the largest sum of chances to fit; misfit: the smallest sum of expected misfits",
      )
        .choices(["chance", "misfit"])
        .default("chance"),
    )
    .addOption(
      new Option("--least-chance <chance>", "a pack that fits with less chance is not lent")
        .argParser(readLeastChance)
        .default(LEAST_CHANCE),
    )
    .addOption(
      new Option(
        "--log <file>",
        "go by what a log of outcomes says of the charts, where it is sure enough, and count in how unsure they are",
      ),
    )
    .addOption(priorOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: LendOptions) => runLend(options, lend, context));
}

async function runLend(options: LendOptions, command: Command, context: Context): Promise<void> {
  const { io, finish } = context;
  requireWords(options, command);
  const membersFile =
    options.members ?? command.error("error: no members are given; say for example --members crew.ndjson");
  const shelfFile =
    options.shelf ?? command.error("error: no shelf is given; say for example --shelf shelf.csv");
  const { loaded, issues: chartIssues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (loaded.length === 0) return refuse(chartIssues, options, context);
  const log = options.log === undefined ? undefined : await readLog(options.log);
  if (log?.ok === false) return refuse(log.issues, options, context);
  const printed = loaded.map(({ chart }) => chart);
  const learned = log === undefined ? undefined : learnFromLog(log.value, printed, options.log ?? "");
  const charts = distinctCharts(learned === undefined ? loaded : correctCharts(loaded, learned));
  const text = await readTextFile(shelfFile);
  if (!text.ok) return refuse(text.issues, options, context);
  const shelf = readShelf(text.value, charts, shelfFile);
  if (!shelf.ok) return refuse(shelf.issues, options, context);
  const read = await readMembers(membersFile, charts, {
    prior: options.prior,
    ...(learned === undefined ? {} : { asSeenFrom: doubtAfterLog(charts, printed, learned) }),
    io,
  });
  if (!read.ok) return refuse(read.issues, options, context);

  const members = read.value.members.map(({ name, answer }) => ({
    member: name,
    recommendations: answer.packs.map(({ recommendation }) => recommendation),
  }));
  const table = lendingTable(members, shelf.value);
  if (!table.ok) return refuse(table.issues, options, context);
  // Which chart could not be judged for whom stands among the issues of the members.
  const aboutLog = log === undefined ? [] : [...namedByFile(loaded), ...log.value.issues];
  const told = [
    ...chartIssues,
    ...aboutLog,
    ...(learned?.issues ?? []),
    ...shelf.issues,
    ...read.value.issues,
  ];
  if (told.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  const { goal, leastChance } = options;
  const lending = lendPacks(table.value, {
    goal,
    leastChance,
    unservedCost: costOfNone(goal, table.value.misfitsMm ?? [], members.length),
  });
  const { leftOut } = read.value;
  const byLog = learned === undefined ? undefined : lendByLog(charts, printed, learned);
  if (options.json === true) {
    // What it counts that somebody goes without is no gain of a pack, but the way to serve everybody first.
    const next = lending.next.map(({ pack, serves }) => ({
      pack,
      ...(serves === undefined ? {} : { serves }),
    }));
    const without = [...lending.without, ...leftOut];
    const answer = { goal, leastChance, ...lending, without, next };
    const issues = told.map(placedIssue);
    return printJson(io.stdout, { ...answer, ...(byLog === undefined ? {} : { byLog }), issues });
  }
  if (told.length > 0) await print(io.stderr, ["About the data", ...issueBullets(told), ""]);
  await print(io.stdout, [
    ...lendByLogLines(byLog ?? []),
    ...lendingLines(lending, leastChance, leftOut),
    ...wrap(`Caution. ${nextStepTexts["see-fitter"]}`),
  ]);
}

/** More than all others could gain by it: nobody goes without who could be served. */
function costOfNone(
  goal: LendingPolicy["goal"],
  misfitsMm: readonly (readonly number[])[],
  members: number,
): number {
  const largest = goal === "chance" ? 1 : Math.max(1, ...misfitsMm.flat());
  return Math.min(LARGEST_COST, (members + 1) * largest);
}

function readLeastChance(text: string): number {
  const chance = Number(text);
  if (/^(?:0?\.\d+|1)$/.test(text) && chance > 0 && chance <= 1) return chance;
  throw new InvalidArgumentError("It must be a number above 0 and up to 1, such as 0.5.");
}
