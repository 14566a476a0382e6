import { basename } from "node:path";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import {
  type LimitsMethod,
  type Study,
  type StudyLayout,
  safeParseStudy,
  summariseStudy,
} from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { type DecimalMark, type LengthUnit, lengthUnits } from "@tapewise/units";
import { type Command, Option } from "commander";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { pathCodes, readTextFile, readTextInput } from "../files.ts";
import { print, printJson } from "../io.ts";
import { readMultiplier, readProbability } from "../option-numbers.ts";
import { jsonOption, requireWords, showUnitOption } from "../options.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { placedIssue } from "../report/placed-issue.ts";
import { studyLines } from "../report/study-lines.ts";
import { studyData } from "../study/study-data.ts";
import { type PictureName, pictureNames, writeStudyFiles } from "../study/study-files.ts";

interface StudyVerbOptions {
  readonly dimension?: DimensionId;
  readonly unit?: LengthUnit;
  readonly layout?: StudyLayout;
  readonly decimalMark?: "point" | "comma";
  readonly measurer?: string;
  readonly people?: "adult" | "child";
  readonly keepImpossible?: boolean;
  readonly confidence: number;
  readonly limits: number;
  readonly limitsMethod?: LimitsMethod;
  readonly html?: string;
  readonly svg?: string;
  readonly picture: PictureName;
  readonly pair?: readonly string[];
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

const EXAMPLES = `
Examples:
  tapewise study class.csv
  tapewise study class.csv --html report.html
  tapewise study class.csv --svg plot.svg --picture agreement --pair Ann Ben
  tapewise study readings.tsv --dimension hip-girth --unit cm --json

A study has a row for each subject and a column for each reading, such as
"Ann 1 (cm)", or a row for each reading with the columns subject, measurer,
repeat and "torso-length (cm)"; or it is JSON. Empty cells and "-" are missing.

The exit status is 1 when a cell cannot be read, or is set aside as impossible.`;

/** `tapewise study`: how far readings of the same people agree, and what to do about it. */
export function addStudy(program: Command, context: Context): void {
  const study = program
    .command("study")
    .summary("tell from repeated readings of several people how far measurers err")
    .description(
      "Reads a reliability study (people, each measured several times or by several measurers) and tells how large the errors are, where they come from and what to do about them.",
    )
    .argument("<file>", "the readings, CSV, TSV or JSON; - is standard input")
    .optionsGroup("The readings:")
    .addOption(
      new Option("--dimension <dimension>", "what was measured, where the file does not say").choices(
        dimensionIds,
      ),
    )
    .addOption(new Option("--unit <unit>", "the unit of readings that name none").choices(lengthUnits))
    .addOption(
      new Option("--layout <layout>", "how the file is laid out (default: as its columns tell)").choices([
        "long",
        "wide",
        "json",
      ]),
    )
    .addOption(
      new Option("--decimal-mark <mark>", "what stands before decimals, where it is unclear").choices([
        "point",
        "comma",
      ]),
    )
    .addOption(new Option("--measurer <name>", "who measured, where the file names nobody"))
    .addOption(
      new Option(
        "--people <who>",
        "whose plausible limits readings must keep (default: child, the widest)",
      ).choices(["adult", "child"]),
    )
    .addOption(new Option("--keep-impossible", "count readings beyond these limits all the same"))
    .optionsGroup("The figures:")
    .addOption(
      new Option("--confidence <chance>", "probability of the intervals")
        .argParser(readProbability)
        .default(0.95, "95%"),
    )
    .addOption(
      new Option("--limits <number>", "limits of agreement: so many standard deviations")
        .argParser(readMultiplier)
        .default(1.96),
    )
    .addOption(
      new Option(
        "--limits-method <method>",
        "how intervals of the limits are made, for studies without repeats (default: exact)",
      ).choices(["exact", "approximate-1999", "approximate-1986"]),
    )
    .optionsGroup("Output:")
    .addOption(new Option("--html <file>", "also write the report as one page of HTML with its pictures"))
    .addOption(new Option("--svg <file>", "also write one picture"))
    .addOption(new Option("--picture <which>", "which one").choices(pictureNames).default("readings"))
    .addOption(
      new Option(
        "--pair <measurers...>",
        "the two measurers of the picture agreement (default: the first two)",
      ),
    )
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((file: string, options: StudyVerbOptions) => runStudy(file, options, study, context));
}

async function runStudy(
  file: string,
  options: StudyVerbOptions,
  command: Command,
  { io, finish }: Context,
): Promise<void> {
  requireWords({ ...options }, command);
  if (options.pair !== undefined && options.pair.length !== 2) {
    command.error("error: option '--pair' takes the names of two measurers");
  }
  const refuse = (issues: readonly Issue[]): Promise<void> => {
    finish(issues.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    if (options.json === true) return printJson(io.stdout, { issues: issues.map(placedIssue) });
    return print(io.stderr, issueBullets(issues, { margin: "" }));
  };
  const text = file === "-" ? await readTextInput(io) : await readTextFile(file);
  if (!text.ok) return refuse(text.issues);
  const { dimension, unit, layout, measurer, people, keepImpossible } = options;
  const outcome = safeParseStudy(text.value, {
    ...{ dimension, unit, layout, measurer, people, keepImpossible },
    decimalMark: options.decimalMark && DECIMAL_MARKS[options.decimalMark],
    file,
  });
  if (!outcome.ok) return refuse(outcome.issues);
  if (outcome.issues.some(({ severity }) => severity === "error")) finish(EXIT.issues);
  const study = outcome.value;
  const report = summariseStudy(study, {
    confidence: options.confidence,
    limits: {
      multiplier: options.limits,
      ...(options.limitsMethod === undefined ? {} : { method: options.limitsMethod }),
    },
  });
  // A study that tells nothing at all has no answer.
  if (report.technicalError === undefined) finish(EXIT.issues);
  const shown = options.showUnit ?? unitOf(study);
  const name = file === "-" ? undefined : basename(file);
  const faults = await writeStudyFiles(study, report, outcome.issues, { ...options, shown, name });
  if (faults.length > 0) {
    finish(faults.some(({ code }) => pathCodes.includes(code)) ? EXIT.misuse : EXIT.issues);
    await print(io.stderr, issueBullets(faults, { margin: "" }));
  }
  if (options.json === true) {
    return printJson(io.stdout, studyData(study, report, outcome.issues, shown));
  }
  await print(io.stdout, studyLines({ study, report, issues: outcome.issues, unit: shown, name }));
}

const DECIMAL_MARKS: Readonly<Record<"point" | "comma", DecimalMark>> = { point: ".", comma: "," };

/** Inches where every reading was written in inches or feet. */
function unitOf({ readings }: Study): "cm" | "in" {
  return readings.every(({ unit }) => unit === "in" || unit === "ft") ? "in" : "cm";
}
