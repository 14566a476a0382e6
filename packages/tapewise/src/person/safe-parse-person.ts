import { buildFeatures } from "@tapewise/fit";
import { dimensionIds, findDimension, measurers, tools } from "@tapewise/landmarks";
import {
  closestWord,
  createIssue,
  didYouMean,
  failure,
  formatPath,
  hasIssues,
  type Issue,
  type IssuePath,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { lengthUnits } from "@tapewise/units";
import type * as z from "zod";
import { tapewiseIssues } from "../issues.ts";
import { personFields, personSchema } from "../schema/person-schema.ts";
import { personCuts } from "./choices.ts";
import type { PersonLine } from "./person-line.ts";

/**
 * Checks that a value, as `JSON.parse` gives it, describes a person. Only its form is looked at here:
 * the readings are still text. Fields that hold `null` are left out.
 *
 * Codes of failure: `person-not-an-object`, `person-field-misspelt`, `person-field-missing`,
 * `person-field-invalid`, `person-choice-unknown`, `person-dimension-unknown`, `person-readings-missing`,
 * `person-readings-too-many`. A warning: `person-field-unknown`.
 *
 * @example
 * ```ts
 * import { safeParsePerson } from "tapewise/batch";
 * const outcome = safeParsePerson({ measureBy: "self", readings: { "torso-length": ["43 cm"] } });
 * outcome.issues[0]?.message; // => "“measureBy” is no field of a person; did you mean “measuredBy”?"
 * ```
 */
export function safeParsePerson(value: unknown): Outcome<PersonLine> {
  if (!isObject(value))
    return failure([createIssue(tapewiseIssues, "person-not-an-object", { received: value })]);

  const questions = unknownFields(value);
  const result = personSchema.safeParse(value);
  const faults = result.success ? [] : result.error.issues.flatMap((fault) => issuesOf(fault, value));
  const issues = [...questions, ...faults];
  const hasStature = value.stature !== undefined && value.stature !== null;
  if (result.success && !hasStature && !hasAnyReading(value.readings)) {
    issues.push(
      createIssue(tapewiseIssues, "person-readings-missing", {
        path: ["readings"],
        received: value.readings,
      }),
    );
  }
  if (hasIssues(issues) && issues.some((issue) => issue.severity === "error")) return failure(issues);
  return success(withoutNulls(value), issues);
}

const FIELDS: readonly string[] = personFields;

const CHOICES: Readonly<Record<string, readonly string[]>> = {
  cut: personCuts,
  measuredBy: measurers,
  tool: tools,
  unit: lengthUnits,
  build: buildFeatures,
};

const LENGTH = "a length with its unit, such as “43.2 cm”";

const WANTED: Readonly<Record<string, string>> = {
  id: "text, or a whole number up to 9007199254740991 either way; a longer one in quotation marks",
  stature: LENGTH,
  ruleLength: LENGTH,
  landmarksFoundAfresh: "true or false",
  firstPack: "true or false",
  error: "biasMm, repeatMm and resolutionMm, each a number of millimetres, zero or more",
  build: `a list of ${buildFeatures.join(", ")}`,
  readings: "for each dimension a list of lengths, such as [“43.2 cm”, “17 in”]",
};

/** The fields that are used; what holds `null` counts as left out. */
function withoutNulls(value: Readonly<Record<string, unknown>>): PersonLine {
  const given = (entries: Readonly<Record<string, unknown>>, names: readonly string[]) =>
    Object.fromEntries(
      names.flatMap((name) => {
        const entry = Object.hasOwn(entries, name) ? entries[name] : undefined;
        return entry === null || entry === undefined ? [] : [[name, entry]];
      }),
    );
  const readings = isObject(value.readings) ? given(value.readings, Object.keys(value.readings)) : {};
  // The schema has just checked every field.
  return { ...given(value, FIELDS), readings } as PersonLine;
}

function hasAnyReading(readings: unknown): boolean {
  return isObject(readings) && Object.values(readings).some((list) => Array.isArray(list) && list.length > 0);
}

function unknownFields(value: Readonly<Record<string, unknown>>): Issue[] {
  return Object.keys(value)
    .filter((field) => !FIELDS.includes(field))
    .map((field) => {
      const suggestion = closestWord(field, FIELDS);
      const facts = { field, fields: FIELDS.join(", ") };
      const details = { path: [field], received: value[field] };
      return suggestion === undefined
        ? createIssue(tapewiseIssues, "person-field-unknown", { ...details, facts })
        : createIssue(tapewiseIssues, "person-field-misspelt", {
            ...details,
            facts: { ...facts, suggestion },
          });
    });
}

/** One fault of the schema in our own words. */
function issuesOf(fault: z.core.$ZodIssue, value: unknown): Issue[] {
  const path: IssuePath = fault.path.map((step) => (typeof step === "symbol" ? String(step) : step));
  const received = valueAt(value, path);
  const [field] = path;
  // The only check of the schema that is no form of a field.
  if (fault.code === "custom") {
    return [createIssue(tapewiseIssues, "person-readings-missing", { path: ["readings"] })];
  }
  if (field === "readings") {
    if (fault.code === "unrecognized_keys") {
      return fault.keys.map((key) => unknownDimension([...path, key], key, valueAt(value, [...path, key])));
    }
    if (fault.code === "too_big") {
      const facts = {
        dimension: String(path[1]).replaceAll("-", " "),
        count: Array.isArray(received) ? received.length : 0,
        limit: Number(fault.maximum),
      };
      return [createIssue(tapewiseIssues, "person-readings-too-many", { path, received, facts })];
    }
  }
  const choices = CHOICES[String(field)];
  if (fault.code === "invalid_value" && choices !== undefined) {
    const nearest = typeof received === "string" ? closestWord(received, choices) : undefined;
    const facts = {
      field: formatPath(path),
      choices: choices.join(", "),
      hint: didYouMean(nearest === undefined ? [] : [nearest]),
    };
    return [createIssue(tapewiseIssues, "person-choice-unknown", { path, received, facts })];
  }
  const facts = { field: formatPath(path), wanted: WANTED[String(field)] ?? "another value" };
  const code = received === undefined ? "person-field-missing" : "person-field-invalid";
  return [createIssue(tapewiseIssues, code, { path, received, facts })];
}

/** A dimension that nobody knows, with the one that may be meant. */
function unknownDimension(path: IssuePath, field: string, received: unknown): Issue {
  const found = findDimension(field);
  const meant =
    found.kind === "match" ? [found.id] : found.kind === "ambiguous" ? found.candidates : found.suggestions;
  const facts = {
    field,
    choices: dimensionIds.join(", "),
    hint: didYouMean(meant),
  };
  return createIssue(tapewiseIssues, "person-dimension-unknown", { path, received, facts });
}

function valueAt(value: unknown, path: IssuePath): unknown {
  let at = value;
  for (const step of path) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, step)) return undefined;
    at = Reflect.get(at, step);
  }
  return at;
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
