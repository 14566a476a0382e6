import { cutSizes, drawGrowthFigure, growthFigure } from "@tapewise/coverage";
import type { DimensionId } from "@tapewise/landmarks";
import { formatIssue } from "@tapewise/outcome";
import { safeParseLength } from "@tapewise/units";
import { type Command, InvalidArgumentError, Option } from "commander";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { writeTextFile } from "../files.ts";
import { print, printJson } from "../io.ts";
import { jsonOption, showUnitOption } from "../options.ts";
import { cutLines } from "../report/cut-lines.ts";
import { issueBullets } from "../report/issue-bullets.ts";
import { sampleData, sampleLines } from "../report/sample-lines.ts";
import { type PeopleCut, peopleOption, surveyedPeople } from "../surveyed-people.ts";
import { tryOr } from "../try-or.ts";

interface CutOptions {
  readonly sizes?: number;
  readonly span?: number;
  readonly goal?: "served" | "misfit";
  readonly dimension: DimensionId;
  readonly step: number;
  readonly cut?: PeopleCut;
  readonly svg?: string;
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
}

const EXAMPLES = `
Examples:
  tapewise cut --sizes 5 --cut women
  tapewise cut --sizes 3 --span "6 cm" --cut both

With a span, the sizes are cut so that they serve as many as possible; without one, so that
fixed lengths are as near to people as possible. --goal says otherwise.`;

const DIMENSIONS: readonly DimensionId[] = [
  "torso-length",
  "back-waist-length",
  "stature",
  "hip-girth",
  "waist-girth",
  "chest-girth",
  "shoulder-breadth",
];
const MOST_SIZES = 20;

/** `tapewise cut`: where sizes are best cut. */
export function addCut(program: Command, context: Context): void {
  const cut = program
    .command("cut")
    .summary("tell where a number of sizes would be best cut")
    .description(
      "Tells where a number of sizes would be best cut for surveyed people, and what more sizes bring.",
    )
    .addOption(new Option("--sizes <number>", "how many sizes").argParser(readSizes))
    .addOption(
      new Option("--span <length>", 'over what length a size adjusts, such as "6 cm"').argParser(readSpan),
    )
    .addOption(
      new Option(
        "--goal <goal>",
        "served: as many as possible within a size; misfit: the smallest expected distance to one",
      ).choices(["served", "misfit"]),
    )
    .addOption(
      new Option("--dimension <dimension>", "what is cut by").choices(DIMENSIONS).default("torso-length"),
    )
    .addOption(
      new Option("--step <length>", "where sizes may begin: multiples of this")
        .argParser(readSpan)
        .default(1, "1 mm"),
    )
    .addOption(peopleOption())
    .addOption(new Option("--svg <file>", "also write a picture of what more sizes bring"))
    .addOption(showUnitOption())
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((options: CutOptions) => runCut(options, cut, context));
}

async function runCut(options: CutOptions, command: Command, { io, finish }: Context): Promise<void> {
  const count =
    options.sizes ?? command.error("error: no number of sizes is given; say for example --sizes 5");
  const { span, dimension, step: stepMm } = options;
  const goal = options.goal ?? (span === undefined ? "misfit" : "served");
  const people = surveyedPeople(options.cut, [], [dimension]);
  const { population, survey } = people;
  const basis = { population, dimension, count, stepMm };
  if (goal === "served" && span === undefined) {
    command.error('error: to serve as many as possible, say over what length a size adjusts: --span "6 cm"');
  }
  const cutAt = () =>
    goal === "served" && span !== undefined
      ? cutSizes({ ...basis, goal, spanMm: span })
      : cutSizes({ ...basis, goal: "misfit", ...(span === undefined ? {} : { spanMm: span }) });
  const cuts = tryOr(cutAt, (reason) => command.error(`error: ${reason}`));
  const unit = options.showUnit ?? "cm";
  if (options.svg !== undefined) {
    const picture = drawGrowthFigure(growthFigure(cuts, { population, unit, survey }));
    const written = await writeTextFile(options.svg, `${picture}\n`);
    if (!written.ok) {
      finish(EXIT.misuse);
      await print(io.stderr, issueBullets(written.issues, { margin: "" }));
    }
  }
  if (options.json === true) {
    const { people: _, ...rest } = cuts;
    return printJson(io.stdout, { cut: people.cut, ...sampleData(people), ...rest });
  }
  await print(io.stdout, [...cutLines(cuts, unit), "", ...sampleLines(people)]);
}

function readSizes(text: string): number {
  const sizes = Number(text);
  if (/^\d+$/.test(text) && sizes >= 1 && sizes <= MOST_SIZES) return sizes;
  throw new InvalidArgumentError(`It must be a whole number from 1 to ${MOST_SIZES}.`);
}

function readSpan(text: string): number {
  const outcome = safeParseLength(text);
  if (!outcome.ok) throw new InvalidArgumentError(outcome.issues.map(formatIssue).join("; "));
  return outcome.value.mm;
}
