import {
  type DimensionId,
  dimensionIds,
  type MeasuredBy,
  measurers,
  type Tool,
  tools,
} from "@tapewise/landmarks";
import {
  anticipateError,
  type Conditions,
  type LessonError,
  lessonErrorFromDefaults,
  type ReadingError,
  type ReadingErrorDegrees,
} from "@tapewise/measurement";
import { type Command, Option } from "commander";
import { readLength, readNoLessThanZero } from "./option-numbers.ts";

/** How readings are taken, or how they err, as options say. */
export interface ErrorOptions {
  readonly dimension: DimensionId;
  readonly length?: number;
  readonly tool?: Tool;
  readonly ruleLength?: number;
  readonly measuredBy?: MeasuredBy;
  readonly afresh?: boolean;
  readonly step: number;
  readonly perReading?: number;
  readonly lasting?: number;
}

/** An error with where it comes from: the table of defaults, or whoever states it. */
export interface KnownError {
  readonly error: ReadingError & ReadingErrorDegrees;
  readonly lesson: LessonError;
  readonly basis: "assumption" | "stated";
  /** How readings are taken; absent where the error is stated, for then it does not matter. */
  readonly conditions?: Conditions;
}

/** Adds the options that say how readings are taken, or how they err. */
export function addErrorOptions(command: Command, aboutLength: string): Command {
  return command
    .addOption(
      new Option("--dimension <dimension>", "what is measured").choices(dimensionIds).default("torso-length"),
    )
    .addOption(new Option("--length <length>", aboutLength).argParser(readLength))
    .addOption(new Option("--tool <tool>", "what it is measured with (default: tape)").choices(tools))
    .addOption(
      new Option("--rule-length <length>", "length of the rule, for the tool short-rule").argParser(
        readLength,
      ),
    )
    .addOption(new Option("--measured-by <who>", "who holds the tool (default: self)").choices(measurers))
    .addOption(new Option("--afresh", "the bones are found anew before each reading"))
    .addOption(
      new Option("--step <length>", "the step that readings are rounded to")
        .argParser(readNoLessThanZero)
        .default(1, "1 mm"),
    )
    .addOption(
      new Option(
        "--per-reading <length>",
        "your own standard deviation from reading to reading, in place of the table's; goes with --lasting",
      ).argParser(readNoLessThanZero),
    )
    .addOption(
      new Option(
        "--lasting <length>",
        "your own standard deviation of what stays in all readings; goes with --per-reading",
      ).argParser(readNoLessThanZero),
    );
}

/** The error that the options amount to, for a dimension of about this length in mm. */
export function readingError(options: ErrorOptions, lengthMm: number, command: Command): KnownError {
  const { dimension, step: stepMm, perReading, lasting, tool, measuredBy, ruleLength, afresh } = options;
  if (perReading !== undefined && lasting !== undefined) {
    const taken = [
      ...(tool === undefined ? [] : ["--tool"]),
      ...(measuredBy === undefined ? [] : ["--measured-by"]),
      ...(afresh === undefined ? [] : ["--afresh"]),
      ...(ruleLength === undefined ? [] : ["--rule-length"]),
    ];
    if (taken.length > 0) {
      command.error(
        `error: ${taken.join(", ")} and an error of your own cannot both be counted; leave one out`,
      );
    }
    return {
      error: { perReadingMm: perReading, lastingMm: lasting },
      lesson: { biasMm: 0, lastingMm: lasting, noiseMm: perReading, stepMm },
      basis: "stated",
    };
  }
  if (perReading !== undefined || lasting !== undefined) {
    command.error("error: --per-reading and --lasting go together; one of them may be 0");
  }
  if (ruleLength !== undefined && tool !== "short-rule") {
    command.error("error: --rule-length goes with --tool short-rule");
  }
  if (ruleLength !== undefined && ruleLength < SHORTEST_RULE_MM) {
    command.error(`error: nobody can measure with a rule shorter than ${SHORTEST_RULE_MM} mm`);
  }
  const conditions: Conditions = {
    tool: tool ?? "tape",
    measuredBy: measuredBy ?? "self",
    landmarksFoundAfresh: afresh === true,
    ...(ruleLength === undefined ? {} : { ruleLengthMm: ruleLength }),
  };
  const reading = { dimension, lengthMm, stepMm, conditions };
  return {
    error: anticipateError(reading),
    lesson: lessonErrorFromDefaults(reading),
    basis: "assumption",
    conditions,
  };
}

/** As in @tapewise/measurement: a shorter rule would be all joints. */
const SHORTEST_RULE_MM = 10;
