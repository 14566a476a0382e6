import { type Catalogue, fillTemplate, type Translation } from "./catalogue.ts";
import { describeReceived, receivedText } from "./describe-received.ts";
import { InvalidArgumentError } from "./errors.ts";
import type { Facts, Issue, IssuePath, Place } from "./issue.ts";

/** What a reporter knows about one issue beyond its code. */
export interface IssueDetails {
  readonly path?: IssuePath;
  readonly received?: unknown;
  readonly facts?: Facts;
  readonly place?: Place;
}

/**
 * Makes an issue of a catalogue's code, its text rendered from the facts.
 *
 * The fact `received` is always there for the texts: it is `received`, shortened and printable.
 *
 * @throws {@link InvalidArgumentError} when the catalogue has no such code.
 *
 * @example
 * ```ts
 * import { createIssue, defineIssues } from "@tapewise/outcome";
 * const catalogue = defineIssues({
 *   "age-negative": { severity: "error", message: "{received} is below zero", expected: "an age in years" },
 * });
 * createIssue(catalogue, "age-negative", { path: ["age"], received: -3 }).message; // => "-3 is below zero"
 * ```
 */
export function createIssue<C extends Catalogue>(
  catalogue: C,
  code: keyof C & string,
  details: IssueDetails = {},
): Issue {
  const definition = Object.hasOwn(catalogue, code) ? catalogue[code] : undefined;
  if (definition === undefined) throw new InvalidArgumentError("code", code, "a code of the catalogue");
  const received = describeReceived(details.received);
  const facts = details.facts ?? {};
  const known: Facts = { received: receivedText(received), ...facts };
  return {
    code,
    severity: definition.severity,
    path: details.path ?? [],
    message: fillTemplate(definition.message, known),
    received,
    expected: fillTemplate(definition.expected, known),
    facts,
    ...(details.place === undefined ? {} : { place: details.place }),
  };
}

/**
 * Renders an issue's texts in another language from its code and facts. An issue whose code the
 * translation lacks is returned unchanged.
 *
 * @example
 * ```ts
 * import { createIssue, defineIssues, translateIssue } from "@tapewise/outcome";
 * const catalogue = defineIssues({
 *   "age-negative": { severity: "error", message: "{received} is below zero", expected: "an age" },
 * });
 * const german = { "age-negative": { message: "{received} ist kleiner als null", expected: "ein Alter" } };
 * const issue = createIssue(catalogue, "age-negative", { received: -3 });
 * translateIssue(issue, german).message; // => "-3 ist kleiner als null"
 * ```
 */
export function translateIssue(issue: Issue, translation: Translation): Issue {
  const wording = Object.hasOwn(translation, issue.code) ? translation[issue.code] : undefined;
  if (wording === undefined) return issue;
  const facts: Facts = { received: receivedText(issue.received), ...issue.facts };
  return {
    ...issue,
    message: fillTemplate(wording.message, facts),
    expected: fillTemplate(wording.expected, facts),
  };
}
