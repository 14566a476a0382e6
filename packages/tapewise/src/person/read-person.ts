import type { Person } from "@tapewise/fit";
import { dimensionIds } from "@tapewise/landmarks";
import {
  assumeConditions,
  type Conditions,
  type Estimate,
  safeEstimate,
  safeReadReadings,
} from "@tapewise/measurement";
import {
  createIssue,
  failure,
  hasIssues,
  InvalidArgumentError,
  type Issue,
  type IssuePath,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { type LengthReading, type Millimetres, safeParseLength } from "@tapewise/units";
import { choosePrior, type PriorChoice } from "./choose-prior.ts";
import { personIssues } from "./person-issues.ts";
import type { PersonLine } from "./person-line.ts";
import { torsoFromReadings } from "./torso-from-readings.ts";

/** How a person is read. */
export interface ReadPersonOptions {
  readonly prior?: PriorChoice;
  /**
   * Whether a stature that is stated, and not read like the other dimensions, becomes an estimate too,
   * because a chart sizes by it.
   */
  readonly estimateStature?: boolean;
}

/** Two statures of one person that differ by more are not of one person, or not in one unit (assumption). */
const STATURES_APART_MM = 30;

/**
 * Makes the person that `recommend` takes from a checked line: readings become estimates, cut and
 * stature become a prior.
 *
 * What can be read is kept: a reading that cannot is reported among the issues with severity `error`,
 * and so is a dimension without any readable reading. Questions about readings are warnings. It fails
 * only when no dimension is left.
 *
 * Codes: `torso-length-straight` and `torso-heights-reversed` where two heights stand in for the torso
 * length; those of `safeParseLength`, `safeReadReadings` and `safeEstimate`, with paths into the line,
 * `person-readings-missing`, `person-rule-unusable`, `person-prior-needs-cut`, `person-statures-differ`,
 * `person-stature-implausible` and `person-stature-not-surveyed`.
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
  const torso = take(torsoFromReadings(estimates));
  if (torso !== undefined) estimates.push(torso);

  const read = estimates.find((estimate) => estimate.dimension === "stature");
  const stated =
    stature === undefined
      ? undefined
      : safeEstimate({ dimension: "stature", readings: [stature], path: ["stature"], ...errorOf(line) });
  // One stated stature is the usual form, so nothing is asked about its being alone.
  const doubts = (stated?.issues ?? []).filter((issue) => issue.code !== "reading-alone");
  issues.push(...doubts, ...compareStatures(line, stature?.mm, read?.mm));
  if (options.estimateStature === true && stated?.ok && read === undefined) estimates.push(stated.value);
  const prior = take(choosePrior(line, stature?.mm ?? read?.mm, options.prior ?? "automatic"));
  if (estimates.length === 0) {
    const missing = createIssue(personIssues, "person-readings-missing", { path: ["readings"] });
    const isToldAlready = hasIssues(issues) && issues.some((issue) => issue.severity === "error");
    return failure(isToldAlready ? issues : [missing, ...issues]);
  }

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

function compareStatures(
  line: PersonLine,
  statedMm: Millimetres | undefined,
  readMm: Millimetres | undefined,
): Issue[] {
  if (statedMm === undefined || readMm === undefined) return [];
  const apartMm = Math.abs(statedMm - readMm);
  if (apartMm <= STATURES_APART_MM) return [];
  const facts = { statedMm, readMm, apartMm, limitMm: STATURES_APART_MM };
  const details = { path: ["stature"], received: line.stature, facts };
  return [createIssue(personIssues, "person-statures-differ", details)];
}

function readConditions(line: PersonLine): Outcome<{ readonly conditions: Conditions }> {
  const { tool, measuredBy, landmarksFoundAfresh } = line;
  const rule = readRule(line);
  const conditions: Conditions = {
    ...(tool === undefined ? {} : { tool }),
    ...(measuredBy === undefined ? {} : { measuredBy }),
    ...(landmarksFoundAfresh === undefined ? {} : { landmarksFoundAfresh }),
    ...(rule?.ok ? { ruleLengthMm: rule.value.mm } : {}),
  };
  return success({ conditions }, rule?.issues);
}

/** The length of the rule; one that nobody could measure with is an issue of its own, and not one of every dimension. */
function readRule(line: PersonLine): Outcome<LengthReading> | undefined {
  if (line.ruleLength === undefined) return undefined;
  const path = ["ruleLength"];
  const rule = readLength(line.ruleLength, line, path);
  if (!rule.ok) return rule;
  try {
    assumeConditions({ ruleLengthMm: rule.value.mm }, rule.value.mm);
    return rule;
  } catch (error) {
    if (!(error instanceof InvalidArgumentError)) throw error;
    const details = { path, received: line.ruleLength, facts: { wanted: error.expected } };
    return failure([createIssue(personIssues, "person-rule-unusable", details)]);
  }
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
