import type { Issue } from "@tapewise/outcome";
import { type Command, Option } from "commander";
import { issueLine } from "../../batch/issue-line.ts";
import { answerPerson } from "../../person/answer-person.ts";
import { idOf } from "../../person/id-of.ts";
import { type AskedPersonOptions, askPerson, requireReadings } from "../ask-person.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { chooseByLog, correctCharts, doubtAfterLog } from "../log/choose-by-log.ts";
import { learnFromLog } from "../log/learn-from-log.ts";
import { namedByFile } from "../log/named-by-file.ts";
import { readLog } from "../log/read-log.ts";
import { chartOption, jsonOption, requireCharts, requireWords, showUnitOption } from "../options.ts";
import { addPersonOptions, addReadingOptions } from "../person-options.ts";
import { choiceByLogLines } from "../report/choice-by-log-lines.ts";
import { detailedChoice } from "../report/detailed-choice.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { reportAnswer } from "../report/report-answer.ts";
import { wrap } from "../text/wrap.ts";

interface ChooseOptions extends AskedPersonOptions {
  readonly chart?: readonly string[];
  readonly log?: string;
  readonly showUnit?: "cm" | "in";
  readonly budget?: boolean;
  readonly json?: boolean;
}

const EXAMPLES = `
Examples:
  tapewise choose --torso-length "43.2 cm" "44 cm" "43.6 cm" --chart chart.csv
  tapewise choose --torso-length "17 1/4 in" --hip-belt-girth "36 in" \\
    --cut women --stature "5 ft 7 in" --chart a.csv b.json
  tapewise choose --person me.json --chart chart.csv --budget`;

/** `tapewise choose`: one person, one or more charts, the whole answer. */
export function addChoose(program: Command, context: Context): void {
  const choose = program
    .command("choose")
    .summary("pick a size for one person, from one chart or several")
    .description("Picks a size for one person, with its probability, its reasons and what to do next.")
    .addOption(chartOption())
    .addOption(
      new Option(
        "--log <file>",
        "go by what a log of outcomes says of the charts, where it is sure enough, and count in how unsure they are",
      ),
    );
  addPersonOptions(addReadingOptions(choose), { isChosenFor: true })
    .optionsGroup("Output:")
    .addOption(showUnitOption())
    .addOption(new Option("--budget", "show where the uncertainty comes from"))
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: ChooseOptions) => runChoose(options, choose, context));
}

async function runChoose(options: ChooseOptions, command: Command, context: Context): Promise<void> {
  const { io, finish } = context;
  requireWords(options, command);
  requireReadings(options, command);
  const { loaded, issues: chartIssues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (chartIssues.length > 0) await print(io.stderr, ["About the charts", ...issueBullets(chartIssues), ""]);

  const asked = await askPerson(options, context);
  if (!asked.ok) {
    if (options.json === true) {
      return printJson(io.stdout, issueLine(null, [...chartIssues, ...asked.issues]));
    }
    return print(io.stderr, issueBullets(asked.issues, { margin: "" }));
  }
  if (loaded.length === 0) {
    return options.json === true ? printJson(io.stdout, issueLine(null, chartIssues)) : undefined;
  }

  const log = options.log === undefined ? undefined : await readLog(options.log);
  if (log?.ok === false) {
    finish(log.issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    if (options.json === true) return printJson(io.stdout, issueLine(null, [...chartIssues, ...log.issues]));
    return print(io.stderr, issueBullets(log.issues, { margin: "" }));
  }
  const printed = loaded.map(({ chart }) => chart);
  const learned = log === undefined ? undefined : learnFromLog(log.value, printed, options.log ?? "");
  const aboutLog =
    log === undefined ? [] : [...namedByFile(loaded), ...log.value.issues, ...(learned?.issues ?? [])];
  if (aboutLog.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  if (aboutLog.length > 0) await print(io.stderr, ["About the log", ...issueBullets(aboutLog), ""]);
  const charts = distinctCharts(learned === undefined ? loaded : correctCharts(loaded, learned));
  const person = asked.value;
  const outcome = answerPerson(person, charts, {
    prior: options.prior,
    unit: options.showUnit,
    ...(learned === undefined ? {} : { asSeenFrom: doubtAfterLog(charts, printed, learned) }),
  });
  const issues = outcome.ok ? outcome.value.issues : outcome.issues;
  if (issues.some((issue) => issue.severity === "error")) finish(EXIT.issues);
  const byLog =
    outcome.ok && learned !== undefined
      ? chooseByLog(outcome.value.person, printed, learned, outcome.value.packs)
      : undefined;
  if (options.json === true) {
    if (!outcome.ok) return printJson(io.stdout, issueLine(idOf(person), outcome.issues));
    const choice = detailedChoice(outcome.value);
    return printJson(io.stdout, byLog === undefined ? choice : { ...choice, byLog });
  }
  if (!outcome.ok)
    return print(io.stderr, [...issueBullets(outcome.issues, { margin: "" }), ...hints(outcome.issues)]);
  await print(io.stderr, hints(issues));
  await print(io.stdout, [
    ...choiceByLogLines(byLog ?? [], outcome.value.unit),
    ...reportAnswer(outcome.value, charts, { budget: options.budget === true }),
  ]);
}

/** What a first-time user of a shell needs to know about readings that could not be read. */
function hints(issues: readonly Issue[]): string[] {
  const codes = new Set(issues.map((issue) => issue.code));
  return codes.has("length-no-unit") || codes.has("length-not-a-number")
    ? wrap('Put each reading in quotation marks, with its unit: --torso-length "18 3/8 in" "46.5 cm".')
    : [];
}
