import {
  subjectsForIccTest,
  subjectsForIccWidth,
  subjectsForLimits,
  subjectsForTem,
  temBounds,
} from "@tapewise/measurement";
import { type Command, Option } from "commander";
import type { Context } from "../context.ts";
import { print, printJson } from "../io.ts";
import { readLength, readProbability, wholeNumber } from "../option-numbers.ts";
import { jsonOption } from "../options.ts";
import { bullets, wrap } from "../text/wrap.ts";
import { tryOr } from "../try-or.ts";

interface PlanStudyOptions {
  readonly subjects?: number;
  readonly repeats: number;
  readonly precision?: number;
  readonly icc?: number;
  readonly iccWidth?: number;
  readonly iccLeast?: number;
  readonly power: number;
  readonly differenceSd?: number;
  readonly limitsWithin?: number;
  readonly probability: number;
  readonly json?: boolean;
}

const EXAMPLES = `
Examples:
  tapewise plan-study --precision 20%
  tapewise plan-study --icc 0.9 --icc-width 0.1 --repeats 3
  tapewise plan-study --icc 0.95 --icc-least 0.85 --power 90%
  tapewise plan-study --difference-sd "8 mm" --limits-within "3 mm"
  tapewise plan-study --subjects 12

Numbers of subjects that were asked for in several ways: take the largest.`;

/** `tapewise plan-study`: how many people a study of reliability needs. */
export function addPlanStudy(program: Command, context: Context): void {
  const plan = program
    .command("plan-study")
    .summary("tell how many people a study of reliability needs")
    .description(
      "Tells how many people to measure, so that errors, correlations or limits of agreement are known as well as wanted; or how well a number of people lets them be known.",
    )
    .addOption(
      new Option("--repeats <number>", "readings of each subject, or measurers who read each")
        .argParser(wholeNumber(2, 1000))
        .default(2),
    )
    .addOption(
      new Option(
        "--subjects <number>",
        "how many there are: tells how well the error will be known",
      ).argParser(wholeNumber(1, 100_000)),
    )
    .addOption(
      new Option(
        "--precision <part>",
        "technical error: its interval ends at most this part above it, such as 20%",
      ).argParser(readProbability),
    )
    .addOption(
      new Option("--icc <correlation>", "intraclass correlation that is expected, such as 0.9").argParser(
        readProbability,
      ),
    )
    .addOption(
      new Option("--icc-width <width>", "width of its interval, from end to end").argParser(readProbability),
    )
    .addOption(
      new Option("--icc-least <correlation>", "show that it is above this one").argParser(readProbability),
    )
    .addOption(
      new Option("--power <chance>", "chance to show it").argParser(readProbability).default(0.8, "80%"),
    )
    .addOption(
      new Option(
        "--difference-sd <length>",
        "limits of agreement: standard deviation of differences that is expected",
      ).argParser(readLength),
    )
    .addOption(new Option("--limits-within <length>", "how far off a limit may be").argParser(readLength))
    .addOption(
      new Option("--probability <chance>", "probability of the intervals")
        .argParser(readProbability)
        .default(0.95, "95%"),
    )
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: PlanStudyOptions) => runPlanStudy(options, plan, context));
}

/** One wish with the number of people that it takes. */
interface StudyWish {
  readonly for: "technical-error" | "icc-width" | "icc-test" | "limits";
  readonly subjects: number;
  readonly sentence: string;
}

async function runPlanStudy(options: PlanStudyOptions, command: Command, { io }: Context): Promise<void> {
  requireTogether(options, command);
  const { subjects, repeats, probability } = options;
  const wishes = tryOr(
    () => wishesOf(options),
    (reason) => command.error(`error: ${reason}`),
  );
  if (wishes.length === 0 && subjects === undefined) {
    command.error("error: nothing is wanted; say for example --precision 20%, or --subjects 12");
  }
  const bounds = subjects === undefined ? undefined : temBounds(subjects, repeats, probability);
  const most = Math.max(0, ...wishes.map((wish) => wish.subjects));
  if (options.json === true) {
    return printJson(io.stdout, {
      repeats,
      probability,
      ...(wishes.length === 0 ? {} : { subjectsNeeded: most }),
      wishes,
      ...(bounds === undefined ? {} : { subjects, technicalErrorBounds: bounds }),
    });
  }
  await print(io.stdout, [
    `Planning a study with ${repeats} readings of each subject`,
    ...bullets(wishes.map(({ sentence }) => sentence)),
    ...(bounds === undefined
      ? []
      : bullets([
          `With ${subjects} subjects the technical error is known from ${bounds.lower.toFixed(2)} to ${bounds.upper.toFixed(2)} times the one found (χ², ${percent(probability)}).`,
        ])),
    ...(wishes.length > 1 ? bullets([`All of it takes ${most} subjects.`]) : []),
    "",
    ...wrap(
      "Choose people who differ as those whom you will fit: among people who are all alike, correlations are low whatever the error. How far measurers differ is told by their number, not by that of the subjects.",
    ),
  ]);
}

function wishesOf(options: PlanStudyOptions): readonly StudyWish[] {
  const { repeats, precision, icc, iccWidth, iccLeast, power, differenceSd, limitsWithin, probability } =
    options;
  const wishes: StudyWish[] = [];
  if (precision !== undefined) {
    const subjects = subjectsForTem({ repeats, precision, probability });
    const sentence = `${subjects} subjects: the interval of the technical error then ends at most ${percent(precision)} above the one found (χ², ${percent(probability)}).`;
    wishes.push({ for: "technical-error", subjects, sentence });
  }
  if (icc !== undefined && iccWidth !== undefined) {
    const subjects = subjectsForIccWidth({ icc, repeats, width: iccWidth, probability });
    const sentence = `${subjects} subjects: the interval of an intraclass correlation of ${icc} is then about ${iccWidth} wide (Bonett 2002, ${percent(probability)}).`;
    wishes.push({ for: "icc-width", subjects, sentence });
  }
  if (icc !== undefined && iccLeast !== undefined) {
    const subjects = subjectsForIccTest({ least: iccLeast, expected: icc, repeats, power });
    const sentence = `${subjects} subjects: an intraclass correlation of ${icc} is then shown to be above ${iccLeast} with a chance of ${percent(power)} (Walter, Eliasziw and Donner 1998, one-sided at 5 %).`;
    wishes.push({ for: "icc-test", subjects, sentence });
  }
  if (differenceSd !== undefined && limitsWithin !== undefined) {
    const subjects = subjectsForLimits({
      differenceSdMm: differenceSd,
      halfWidthMm: limitsWithin,
      probability,
    });
    const sentence = `${subjects} subjects: limits of agreement are then known to about ${mm(limitsWithin)} where differences have a standard deviation of ${mm(differenceSd)} (Bland and Altman 1986, ${percent(probability)}).`;
    wishes.push({ for: "limits", subjects, sentence });
  }
  return wishes;
}

function requireTogether(
  { icc, iccWidth, iccLeast, differenceSd, limitsWithin }: PlanStudyOptions,
  command: Command,
): void {
  if ((icc === undefined) !== (iccWidth === undefined && iccLeast === undefined)) {
    command.error("error: --icc goes with --icc-width or --icc-least");
  }
  if ((differenceSd === undefined) !== (limitsWithin === undefined)) {
    command.error("error: --difference-sd and --limits-within go together");
  }
}

function percent(share: number): string {
  return `${Number((share * 100).toPrecision(6))} %`;
}

function mm(length: number): string {
  return `${Number(length.toPrecision(6))} mm`;
}
