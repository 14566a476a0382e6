import { InvalidArgumentError } from "./errors.ts";
import type { Facts, Severity } from "./issue.ts";

/** What one issue code means. `{name}` in a text stands for the fact of that name or for `{received}`. */
export interface IssueDefinition {
  readonly severity: Severity;
  /** What is wrong, as one sentence without a final stop. */
  readonly message: string;
  /** What would have been right, as a noun phrase. */
  readonly expected: string;
}

/** Issue codes with their meaning: the one place that holds a package's wording. */
export type Catalogue = Readonly<Record<string, IssueDefinition>>;

/** The wording of a catalogue in another language: the same codes, other texts. */
export type Translation<C extends Catalogue = Catalogue> = Readonly<
  Record<keyof C & string, Pick<IssueDefinition, "message" | "expected">>
>;

const CODE = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;

/**
 * Declares a package's issue codes. Codes are lower case with hyphens and never change their meaning.
 *
 * @throws {@link InvalidArgumentError} when a code is not lower case with hyphens, or a text is empty.
 *
 * @example
 * ```ts
 * import { defineIssues } from "@tapewise/outcome";
 * const issues = defineIssues({
 *   "age-missing": { severity: "error", message: "{who} has no age", expected: "an age in years" },
 * });
 * issues["age-missing"].severity; // => "error"
 * ```
 */
export function defineIssues<const C extends Catalogue>(catalogue: C): C {
  for (const [code, definition] of Object.entries(catalogue)) {
    if (!CODE.test(code)) throw new InvalidArgumentError("code", code, "lower-case words joined by hyphens");
    if (definition.message === "" || definition.expected === "") {
      throw new InvalidArgumentError(`catalogue["${code}"]`, "", "a message and an expected form");
    }
  }
  return catalogue;
}

/**
 * Fills the `{name}` places of a text with facts. A place without a fact stays as it is written,
 * so that a missing fact is visible and never becomes "undefined".
 *
 * @example
 * ```ts
 * import { fillTemplate } from "@tapewise/outcome";
 * fillTemplate("{received} has no unit", { received: "19" }); // => "19 has no unit"
 * ```
 */
export function fillTemplate(template: string, facts: Facts): string {
  return template.replace(/\{([A-Za-z][A-Za-z0-9]*)\}/g, (place, name: string) =>
    Object.hasOwn(facts, name) ? String(facts[name]) : place,
  );
}
