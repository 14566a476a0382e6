import { type BodyCheckState, partDimensions, startBodyCheck, writeBodyCheck } from "@tapewise/afterwards";
import type { Issue, Outcome } from "@tapewise/outcome";
import { type Command, Option } from "commander";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import { type AskedPersonOptions, askPerson, personOf, requireReadings } from "../ask-person.ts";
import { askCheck } from "../check/ask-check.ts";
import { readAnswer, type StatedAnswer } from "../check/read-answers.ts";
import { replayAnswers } from "../check/replay-answers.ts";
import { setUpCheck } from "../check/set-up-check.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { shellWord } from "../guide/shell-word.ts";
import { print, printJson } from "../io.ts";
import { loadCharts } from "../load-charts.ts";
import { jsonOption, requireWords, showUnitOption } from "../options.ts";
import { addPersonOptions, addReadingOptions } from "../person-options.ts";
import { carryingCautions, checkLines } from "../report/check-lines.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { wrap } from "../text/wrap.ts";

interface CheckOptions extends AskedPersonOptions {
  readonly chart?: string;
  readonly size?: string;
  readonly belt?: string;
  readonly answer?: readonly StatedAnswer[];
  /** An empty second look comes as `true`. */
  readonly again?: readonly StatedAnswer[] | true;
  /** Commander's form of `--no-ask`. */
  readonly ask: boolean;
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

const EXAMPLES = `
On a terminal it asks, question by question. Elsewhere, and with --no-ask, it
takes the answers that the call gives and prints the next question, or what the
answers come to. After something was set, --again holds the answers of the
second look, and without any it asks the first question of that look. An item
given twice in one list is no second look: its second answer counts only where
answers contradict each other and the item is asked again. Pain and the other
cautions end the check wherever they are given.

Examples:
  tapewise check --chart chart.csv --size M --torso-length "44 cm" "43.6 cm"
  tapewise check --chart chart.csv --size M --person me.json \\
    --answer cautions=none belt-position=over-crests belt-closure=gap-at-buckle`;

/** `tapewise check`: a loaded pack on the body, looked at step by step. */
export function addCheck(program: Command, context: Context): void {
  const check = program
    .command("check")
    .summary("look at a loaded pack on the body, step by step")
    .description(
      "Looks at a loaded pack on the body: what to set first, when to exchange it and for which size, and when a fitter has to look.",
    )
    .addOption(new Option("--chart <file>", "the size chart of the pack, CSV or JSON"))
    .addOption(new Option("--size <size>", "the size that is on the body, as the chart names it"))
    .addOption(new Option("--belt <belt>", "the hip belt, where belts are sized apart"))
    .addOption(
      new Option("--answer <answers...>", "what was seen, each item=answer, in any order").argParser(
        readAnswer,
      ),
    )
    .addOption(
      new Option("--again [answers...]", "what was seen after the pack was set, in the same form").argParser(
        readAnswer,
      ),
    );
  addPersonOptions(addReadingOptions(check), { isChosenFor: false })
    .optionsGroup("Output:")
    .addOption(showUnitOption())
    .addOption(new Option("--no-ask", "only print where the check stands, also on a terminal"))
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: CheckOptions) => runCheck(options, check, context));
}

async function runCheck(options: CheckOptions, command: Command, context: Context): Promise<void> {
  const { io, finish } = context;
  requireWords(options, command);
  const path = options.chart ?? command.error("error: no chart is given; say for example --chart chart.csv");
  const size = options.size ?? command.error("error: no size is given; say for example --size M");
  requireReadings(options, command);
  const { loaded, issues: chartIssues, status } = await loadCharts([path]);
  finish(status);
  if (chartIssues.length > 0) await print(io.stderr, ["About the charts", ...issueBullets(chartIssues), ""]);
  const refuse = (issues: readonly Issue[]): Promise<void> => {
    if (issues.some(({ severity }) => severity === "error")) finish(EXIT.issues);
    return options.json === true
      ? printJson(io.stdout, { issues: issues.map(summariseIssue) })
      : print(io.stderr, issueBullets(issues, { margin: "" }));
  };
  const asked = await askPerson(options, context);
  if (!asked.ok) return refuse(asked.issues);
  const chart = loaded[0]?.chart;
  if (chart === undefined)
    return options.json === true
      ? printJson(io.stdout, { issues: chartIssues.map(summariseIssue) })
      : undefined;

  const { person, issues } = personOf(asked.value, options.prior);
  if (issues.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  if (person === undefined) return refuse(issues);
  const setup = setUpCheck({ chart, size, belt: options.belt }, person);
  if (!setup.ok) return refuse([...issues, ...setup.issues]);
  const started: Outcome<BodyCheckState> = startBodyCheck(setup.value);
  if (!started.ok) return refuse([...issues, ...started.issues]);
  if (options.json !== true && issues.length > 0)
    await print(io.stderr, ["About the readings", ...issueBullets(issues), ""]);

  const again = options.again === true ? [] : options.again;
  const { state, unused } = replayAnswers(started.value, options.answer ?? [], again);
  await print(
    io.stderr,
    [...beltNote(options, chart.belts.length), ...unusedNotes(unused)].flatMap((note) =>
      wrap(`Note: ${note}`),
    ),
  );
  const unit = options.showUnit ?? unitOf(person.estimates);
  if (options.json === true) return printJson(io.stdout, checkData(state, unit, issues));
  const isTerminal = io.stdin.isTTY === true && io.stdout.isTTY === true;
  if (!(options.ask && isTerminal && state.step.kind === "ask")) {
    return print(io.stdout, [...checkLines(state, unit), ...noteDown(state, path)]);
  }
  const ended = await askCheck(state, unit, io);
  if (ended !== undefined) await print(io.stdout, noteDown(ended, path));
}

function beltNote({ belt }: CheckOptions, belts: number): string[] {
  return belt === undefined && belts > 0
    ? ["the hip belts of this pack are sized apart; without --belt, the belt cannot be judged."]
    : [];
}

function unusedNotes(unused: readonly StatedAnswer[]): string[] {
  if (unused.length === 0) return [];
  const list = unused.map(({ item, answer }) => `${item}=${answer}`).join(", ");
  return [`not used, for the check did not ask for it: ${list}.`];
}

function unitOf(
  estimates: readonly { readonly readings: readonly { readonly unit: string }[] }[],
): "cm" | "in" {
  const units = estimates.flatMap(({ readings }) => readings.map(({ unit }) => unit));
  return units.length > 0 && units.every((unit) => unit === "in" || unit === "ft") ? "in" : "cm";
}

function checkData(state: BodyCheckState, unit: "cm" | "in", issues: readonly Issue[]): unknown {
  const { setup, look, answers, questioned, step } = state;
  return {
    chart: setup.chart.chart,
    size: setup.size,
    ...(setup.belt === undefined ? {} : { belt: setup.belt }),
    look,
    answers,
    ...(questioned === undefined ? {} : { questioned }),
    step,
    ...writeBodyCheck(step, { unit }),
    cautions: carryingCautions().map(({ code, name, text, ask }) => ({ code, name, text, ask })),
    issues: issues.map(summariseIssue),
  };
}

/** How what became of the pack is noted down for those who choose after. */
function noteDown({ setup, step }: BodyCheckState, chart: string): string[] {
  const told = toldOf(step);
  if (told === undefined) return [];
  return [
    "",
    ...wrap("To keep what became of it, with the readings, under a pseudonym that tells others nothing:"),
    `  tapewise log add log.ndjson ${told} \\`,
    `    --chart ${shellWord(chart)} --size ${shellWord(setup.size)} --pseudonym … --${readingOf(setup)} …`,
  ];
}

/** The reading that goes with what is noted down: of the length, or where the chart states none of the girth. */
function readingOf({ chart, size }: BodyCheckState["setup"]): string {
  const ranges = chart.sizes.find(({ name }) => name === size)?.ranges;
  const stated = [...partDimensions.harness, ...partDimensions.belt].find(
    (dimension) => ranges?.[dimension] !== undefined,
  );
  return stated === "unstated-hip-girth" ? "hip-girth" : (stated ?? "torso-length");
}

function toldOf(step: BodyCheckState["step"]): string | undefined {
  if (step.kind === "sits-right") return "kept";
  if (step.kind !== "exchange") return undefined;
  const taken = step.part === "harness" ? ` --exchanged-for ${shellWord(step.to)}` : "";
  return `exchanged --reason ${step.reason}${taken}`;
}
