import type { PriorChoice } from "../person/choose-prior.ts";
import { personFields } from "../schema/person-schema.ts";
import { type PersonOptions, personFromOptions } from "./person-from-options.ts";

/** Where a person comes from. */
export interface PersonSources {
  readonly options: PersonOptions;
  /** The JSON value of the person's file, where there is one. */
  readonly file?: unknown;
  /** How the file is called. */
  readonly path?: string | undefined;
  readonly prior: PriorChoice;
}

/** What of a call changes nothing, or takes the place of something else: nothing of it shall pass in silence. */
export function optionNotes(sources: PersonSources): string[] {
  const { options, file, path, prior } = sources;
  const person = partsOf(personFromOptions(options, file));
  const readings = partsOf(person.readings);
  const notes: string[] = [];
  const replaced = replacedParts(personFromOptions(options, undefined), file);
  if (replaced.length > 0) {
    notes.push(
      `the command line counts in place of what ${path ?? "the person's file"} says: ${replaced.join(", ")}.`,
    );
  }
  if (given(person.ruleLength) && person.tool !== "short-rule") {
    notes.push("--rule-length was not used: it goes with --tool short-rule.");
  }
  if (prior === "automatic") {
    const stature = given(person.stature) || given(readings.stature);
    const orElse = "or --prior reference";
    if (given(person.cut) && !stature) {
      notes.push(`no survey figures were used: they need --stature beside --cut, ${orElse}.`);
    }
    if (given(person.stature) && !given(person.cut)) {
      notes.push("no survey figures were used: they need --cut beside --stature.");
    }
  }
  return notes.map((note) => `Note: ${note}`);
}

/** The readings and fields that both the command line and the file state. */
function replacedParts(said: unknown, file: unknown): string[] {
  const [line, before] = [partsOf(said), partsOf(file)];
  const [readings, earlier] = [partsOf(line.readings), partsOf(before.readings)];
  return [
    ...Object.keys(readings).filter((dimension) => given(earlier[dimension])),
    ...personFields.filter((field) => field !== "readings" && given(line[field]) && given(before[field])),
  ];
}

function given(value: unknown): boolean {
  return value !== undefined && value !== null;
}

function partsOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? { ...value } : {};
}
