import type { Person } from "@tapewise/fit";
import { contains } from "@tapewise/intervals";
import { dimensionIds, plausibleLimits } from "@tapewise/landmarks";
import {
  type Conditions,
  type Estimate,
  type Prior,
  safeEstimate,
  safeReadReadings,
} from "@tapewise/measurement";
import {
  createIssue,
  failure,
  hasIssues,
  type Issue,
  type IssuePath,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { referencePrior } from "@tapewise/population";
import { type LengthReading, safeParseLength } from "@tapewise/units";
import { tapewiseIssues } from "../issues.ts";
import type { PersonLine } from "./person-line.ts";

/**
 * What is taken to be known of people beforehand.
 *
 * - `automatic`: the reference figures where both the cut and the stature are given, else nothing.
 * - `reference`: the reference figures of the cut, with the stature where it is given.
 * - `none`: nothing.
 */
export type PriorChoice = "automatic" | "reference" | "none";

/** How a person is read. */
export interface ReadPersonOptions {
  readonly prior?: PriorChoice;
  /**
   * Whether a stature that is stated, and not read like the other dimensions, becomes an estimate too,
   * because a chart sizes by it.
   */
  readonly estimateStature?: boolean;
}

/**
 * Makes the person that `recommend` takes from a checked line: readings become estimates, cut and
 * stature become a prior.
 *
 * What can be read is kept: a reading that cannot is reported among the issues with severity `error`,
 * and so is a dimension without any readable reading. Questions about readings are warnings. It fails
 * only when no dimension is left.
 *
 * Codes: those of `safeParseLength`, `safeReadReadings` and `safeEstimate`, with paths into the line,
 * `person-prior-needs-cut` and `person-stature-implausible`.
 *
 * @example
 * ```ts
 * import { safeReadPerson } from "tapewise/batch";
 * const outcome = safeReadPerson({ readings: { "torso-length": ["43 cm", "44 cm", "43"] } });
 * outcome.ok && outcome.value.estimates[0]?.mm; // => 435
 * outcome.issues[0]?.path; // => ["readings", "torso-length", 2]
 * ```
 */
export function safeReadPerson(line: PersonLine, options: ReadPersonOptions = {}): Outcome<Person> {
  const issues: Issue[] = [];
  const take = <T>(outcome: Outcome<T>): T | undefined => {
    issues.push(...outcome.issues);
    return outcome.ok ? outcome.value : undefined;
  };

  const stature = line.stature === undefined ? undefined : take(readLength(line.stature, line, ["stature"]));
  const conditions = take(readConditions(line));
  const estimates: Estimate[] = [];
  for (const dimension of dimensionIds) {
    const texts = line.readings[dimension];
    if (texts === undefined || texts.length === 0) continue;
    const path = ["readings", dimension];
    const readings = take(safeReadReadings(dimension, withUnit(texts, line), { ...unitOf(line), path }));
    if (readings === undefined) continue;
    const estimate = take(safeEstimate({ dimension, readings, path, ...conditions, ...errorOf(line) }));
    if (estimate !== undefined) estimates.push(estimate);
  }

  const isEmpty = estimates.length === 0;
  const read = estimates.find((estimate) => estimate.dimension === "stature");
  const stated =
    stature === undefined
      ? undefined
      : safeEstimate({ dimension: "stature", readings: [stature], path: ["stature"], ...errorOf(line) });
  // One stated stature is the usual form, so nothing is asked about its being alone.
  const doubts = (stated?.issues ?? []).filter((issue) => issue.code !== "reading-alone");
  issues.push(...doubts);
  if (options.estimateStature === true && stated?.ok && read === undefined) estimates.push(stated.value);
  const prior = take(choosePrior(line, stature?.mm ?? read?.mm, options.prior ?? "automatic"));
  if (isEmpty && hasIssues(issues)) return failure(issues);

  return success(
    {
      estimates,
      ...(prior === undefined ? {} : { prior }),
      ...(line.cut === undefined ? {} : { cut: line.cut }),
      ...(line.build === undefined ? {} : { build: line.build }),
      ...(line.firstPack === undefined ? {} : { firstPack: line.firstPack }),
    },
    issues,
  );
}

function choosePrior(
  line: PersonLine,
  statureMm: LengthReading["mm"] | undefined,
  choice: PriorChoice,
): Outcome<Prior | undefined> {
  if (choice === "none") return success(undefined);
  if (line.cut === undefined) {
    const asked = choice === "reference";
    return success(
      undefined,
      asked ? [createIssue(tapewiseIssues, "person-prior-needs-cut", { path: ["cut"] })] : [],
    );
  }
  if (statureMm !== undefined && !contains(plausibleLimits("stature", "child"), statureMm)) {
    const facts = { statureMm };
    return success(undefined, [
      createIssue(tapewiseIssues, "person-stature-implausible", {
        path: ["stature"],
        received: line.stature,
        facts,
      }),
    ]);
  }
  if (statureMm === undefined) {
    return success(choice === "reference" ? referencePrior({ cut: line.cut }) : undefined);
  }
  return success(referencePrior({ cut: line.cut, statureMm }));
}

function readConditions(line: PersonLine): Outcome<{ readonly conditions: Conditions }> {
  const { tool, measuredBy, landmarksFoundAfresh, ruleLength } = line;
  const rule = ruleLength === undefined ? undefined : readLength(ruleLength, line, ["ruleLength"]);
  const conditions: Conditions = {
    ...(tool === undefined ? {} : { tool }),
    ...(measuredBy === undefined ? {} : { measuredBy }),
    ...(landmarksFoundAfresh === undefined ? {} : { landmarksFoundAfresh }),
    ...(rule?.ok ? { ruleLengthMm: rule.value.mm } : {}),
  };
  return success({ conditions }, rule?.issues);
}

function readLength(text: string | number, line: PersonLine, path: IssuePath): Outcome<LengthReading> {
  const [written] = withUnit([text], line);
  return safeParseLength(written, { ...unitOf(line), path });
}

/** A JSON number is a reading only where the line names its unit; else it stays a number and is refused. */
function withUnit(texts: readonly (string | number)[], line: PersonLine): readonly unknown[] {
  return line.unit === undefined
    ? texts
    : texts.map((text) => (typeof text === "number" ? String(text) : text));
}

function unitOf(line: PersonLine): { readonly unit?: NonNullable<PersonLine["unit"]> } {
  return line.unit === undefined ? {} : { unit: line.unit };
}

function errorOf(line: PersonLine): { readonly error?: NonNullable<PersonLine["error"]> } {
  return line.error === undefined ? {} : { error: line.error };
}
