import { speakDimension } from "@tapewise/charts";
import { buildFeatures } from "@tapewise/fit";
import { measurers, tools } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import { lengthUnits } from "@tapewise/units";
import { type Command, Option } from "commander";
import { issueLine } from "../../batch/issue-line.ts";
import { answerPerson } from "../../person/answer-person.ts";
import { personCuts } from "../../person/choices.ts";
import type { PriorChoice } from "../../person/choose-prior.ts";
import { idOf } from "../../person/id-of.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes } from "../files.ts";
import { print, printJson } from "../io.ts";
import { distinctCharts, loadCharts } from "../load-charts.ts";
import { optionNotes } from "../option-notes.ts";
import {
  chartOption,
  jsonOption,
  priorOption,
  requireCharts,
  requireWords,
  showUnitOption,
} from "../options.ts";
import {
  hasReadings,
  type PersonOptions,
  personFromOptions,
  readDimensions,
} from "../person-from-options.ts";
import { readPersonFile } from "../read-person-file.ts";
import { detailedChoice } from "../report/detailed-choice.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { reportAnswer } from "../report/report-answer.ts";
import { wrap } from "../text/wrap.ts";

interface ChooseOptions extends PersonOptions {
  readonly chart?: readonly string[];
  readonly person?: string;
  readonly prior?: Exclude<PriorChoice, "automatic">;
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
    .optionsGroup("Readings, each with one or more lengths:");
  for (const dimension of readDimensions) {
    choose.addOption(new Option(`--${dimension} <readings...>`, `the ${speakDimension(dimension)}`));
  }
  choose
    .optionsGroup("The person and the measuring:")
    .addOption(
      new Option("--person <file>", "a person as JSON, in the form of the batch; - is standard input"),
    )
    .addOption(new Option("--unit <unit>", "the unit of readings that name none").choices(lengthUnits))
    .addOption(
      new Option("--cut <cut>", "whose survey figures to weigh the readings with").choices(personCuts),
    )
    .addOption(new Option("--stature <length>", "standing height, for the survey figures"))
    .addOption(new Option("--tool <tool>", "what the readings were taken with").choices(tools))
    .addOption(new Option("--rule-length <length>", "length of the rule, for the tool short-rule"))
    .addOption(new Option("--measured-by <who>", "who held the tool").choices(measurers))
    .addOption(new Option("--afresh", "the bones were found anew before each reading"))
    .addOption(
      new Option("--build <features...>", "features of build that decide ties").choices(buildFeatures),
    )
    .addOption(
      new Option(
        "--first-pack",
        "a first pack: among packs that fit about as well, those with adjustable harnesses first",
      ),
    )
    .addOption(priorOption())
    .optionsGroup("Output:")
    .addOption(showUnitOption())
    .addOption(new Option("--budget", "show where the uncertainty comes from"))
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: ChooseOptions) => runChoose(options, choose, context));
}

async function runChoose(options: ChooseOptions, command: Command, { io, finish }: Context): Promise<void> {
  requireWords(options, command);
  if (options.person === undefined && !hasReadings(options)) {
    command.error(
      'error: no reading is given; say for example --torso-length "43.2 cm", or --person me.json',
    );
  }
  const { loaded, issues: chartIssues, status } = await loadCharts(requireCharts(options, command));
  finish(status);
  if (chartIssues.length > 0) await print(io.stderr, ["About the charts", ...issueBullets(chartIssues), ""]);

  const file = options.person === undefined ? undefined : await readPersonFile(options.person, io);
  if (file !== undefined && !file.ok) {
    finish(file.issues.some((issue) => pathCodes.includes(issue.code)) ? EXIT.misuse : EXIT.issues);
    if (options.json === true) return printJson(io.stdout, issueLine(null, [...chartIssues, ...file.issues]));
    return print(io.stderr, issueBullets(file.issues, { margin: "" }));
  }
  if (loaded.length === 0) {
    return options.json === true ? printJson(io.stdout, issueLine(null, chartIssues)) : undefined;
  }

  const charts = distinctCharts(loaded);
  const person = personFromOptions(options, file?.value);
  const notes = optionNotes({
    options,
    file: file?.value,
    path: options.person,
    prior: options.prior ?? "automatic",
  });
  await print(
    io.stderr,
    notes.flatMap((note) => wrap(note)),
  );
  const outcome = answerPerson(person, charts, { prior: options.prior, unit: options.showUnit });
  const issues = outcome.ok ? outcome.value.issues : outcome.issues;
  if (issues.some((issue) => issue.severity === "error")) finish(EXIT.issues);
  if (options.json === true) {
    return printJson(
      io.stdout,
      outcome.ok ? detailedChoice(outcome.value) : issueLine(idOf(person), outcome.issues),
    );
  }
  if (!outcome.ok)
    return print(io.stderr, [...issueBullets(outcome.issues, { margin: "" }), ...hints(outcome.issues)]);
  await print(io.stderr, hints(issues));
  await print(io.stdout, reportAnswer(outcome.value, charts, { budget: options.budget === true }));
}

/** What a first-time user of a shell needs to know about readings that could not be read. */
function hints(issues: readonly Issue[]): string[] {
  const codes = new Set(issues.map((issue) => issue.code));
  return codes.has("length-no-unit") || codes.has("length-not-a-number")
    ? wrap('Put each reading in quotation marks, with its unit: --torso-length "18 3/8 in" "46.5 cm".')
    : [];
}
