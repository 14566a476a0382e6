import { closestWord, createIssue, didYouMean, type Issue, type IssuePath } from "@tapewise/outcome";
import { afterwardsIssues } from "../issues.ts";

/** An object whose fields are still to be looked at. */
export type Fields = Readonly<Record<string, unknown>>;

/** A test of a value, and in words what passes it. */
export interface Wanted<T> {
  readonly test: (value: unknown) => value is T;
  readonly words: string;
}

/** Where fields are, and where complaints about them go. */
export interface Place {
  readonly path: IssuePath;
  readonly issues: Issue[];
}

export function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** A field that must be there. What fails comes back as it is, beside an error: no row is made of it. */
export function requiredOf<T>(from: Fields, field: string, wanted: Wanted<T>, place: Place): T {
  const value = from[field];
  if (!wanted.test(value)) complain(field, value, wanted.words, place);
  return value as T;
}

/** A field that may be left out. */
export function optionalOf<T>(from: Fields, field: string, wanted: Wanted<T>, place: Place): T | undefined {
  return from[field] === undefined ? undefined : requiredOf(from, field, wanted, place);
}

/** Says that a field is missing or wrong. */
export function complain(field: string, value: unknown, words: string, { path, issues }: Place): void {
  const code = value === undefined ? "outcome-field-missing" : "outcome-field-invalid";
  issues.push(
    createIssue(afterwardsIssues, code, {
      path: [...path, field],
      received: value,
      facts: { field, wanted: words },
    }),
  );
}

/** Warns of fields that are not used. */
export function warnOfOthers(from: Fields, known: ReadonlySet<string>, { path, issues }: Place): void {
  for (const field in from) {
    if (known.has(field) || !Object.hasOwn(from, field)) continue;
    const near = closestWord(field, [...known]);
    const hint = didYouMean(near === undefined ? [] : [near]);
    issues.push(
      createIssue(afterwardsIssues, "outcome-field-unknown", {
        path: [...path, field],
        received: field,
        facts: { field, hint, fields: [...known].join(", ") },
      }),
    );
  }
}
