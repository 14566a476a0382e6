import {
  cautionsFor,
  dimension,
  dimensionIds,
  landmark,
  measurers,
  safeParseDimension,
  tools,
} from "@tapewise/landmarks";
import type { LengthUnit } from "@tapewise/units";
import { lengthUnits } from "@tapewise/units";
import { type Command, Option } from "commander";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import type { Context } from "../context.ts";
import { EXIT } from "../exit-status.ts";
import { suitableWays, type WayWish, wayOptions } from "../guide/choose-way.ts";
import { dimensionList, guideLines } from "../guide/guide-lines.ts";
import { walk } from "../guide/walk.ts";
import { pageWidth, print, printJson } from "../io.ts";
import { jsonOption, showUnitOption } from "../options.ts";

interface GuideOptions extends WayWish {
  readonly unit?: LengthUnit;
  readonly showUnit?: "cm" | "in";
  readonly json?: boolean;
  /** Commander's form of `--no-ask`. */
  readonly ask: boolean;
}

const EXAMPLES = `
Examples:
  tapewise guide
  tapewise guide torso-length --measured-by self
  tapewise guide hip-belt-girth --no-ask > hip-belt.txt`;

/** `tapewise guide`: how to take a dimension, on a terminal step by step. */
export function addGuide(program: Command, context: Context): void {
  const guide = program
    .command("guide")
    .summary("learn how to take a reading, step by step")
    .description(
      "Tells how to take a dimension of the body. On a terminal it goes step by step and takes the readings.",
    )
    .argument("[dimension]", "which one; without it, all are listed")
    .addOption(new Option("--tool <tool>", "what you have to measure with").choices(tools))
    .addOption(new Option("--measured-by <who>", "who holds the tool").choices(measurers))
    .addOption(new Option("--unit <unit>", "the unit of readings that name none").choices(lengthUnits))
    .addOption(showUnitOption())
    .addOption(new Option("--no-ask", "only print the guide, also on a terminal"))
    .addOption(jsonOption())
    .addHelpText("after", EXAMPLES)
    .action((text: string | undefined, options: GuideOptions) => runGuide(text, options, guide, context));
}

async function runGuide(
  text: string | undefined,
  options: GuideOptions,
  command: Command,
  { io, finish }: Context,
): Promise<void> {
  if (text === undefined) {
    return options.json === true
      ? printJson(io.stdout, dimensionIds.map(dimension))
      : print(io.stdout, dimensionList(pageWidth(io.stdout)));
  }
  const found = safeParseDimension(text);
  if (!found.ok) {
    if (options.json === true) {
      finish(EXIT.misuse);
      return printJson(io.stdout, { issues: found.issues.map(summariseIssue) });
    }
    const [issue] = found.issues;
    return command.error(`error: ${issue.message}; expected ${issue.expected} [${issue.code}]`);
  }
  const one = dimension(found.value);
  const ways = suitableWays(one, options);
  const [way] = ways;
  if (way === undefined) {
    const known = one.ways.map((other) => `  ${wayOptions(other)}`).join("\n");
    return command.error(
      `error: the ${one.name} is not taken in this way. ${one.helperReason ?? ""}\nWays to take it:\n${known}`,
    );
  }
  if (options.json === true) {
    return printJson(io.stdout, {
      ...one,
      cautions: cautionsFor(one.id),
      landmarks: one.landmarks.map(landmark),
    });
  }
  if (options.ask && io.stdin.isTTY === true && io.stdout.isTTY === true) return walk(one, ways, options, io);
  return print(io.stdout, guideLines(one, way, pageWidth(io.stdout)));
}
