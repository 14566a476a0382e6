import type { SizeChart } from "@tapewise/charts";
import { createIssue } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { parsePersonJson } from "../person/parse-person-json.ts";
import type { BatchLine } from "./choice-line.ts";
import { type ChooseOptions, choosePerson } from "./choose-person.ts";
import { issueLine } from "./issue-line.ts";
import { summariseIssue } from "./summarise-issue.ts";

/** How lines are answered. */
export interface ChooseLineOptions extends ChooseOptions {
  /** Number of the line in its stream, for the issues of a line that is not even JSON. Counts from 1. */
  readonly line?: number;
}

/**
 * Answers one line of the batch contract: the person in it, held against every chart.
 *
 * Whatever the text is, the answer is one object: see {@link choosePerson}. Adds the codes
 * `batch-line-not-json` and `person-field-repeated`.
 *
 * @example
 * ```ts
 * import { chooseLine } from "tapewise/batch";
 * const answer = chooseLine('{"id":"p2","readings":{"torso-length":["43"]}}', []);
 * answer.issues?.map((issue) => [issue.code, issue.path]);
 * // => [["length-no-unit", ["readings", "torso-length", 0]]]
 * ```
 */
export function chooseLine(
  text: string,
  charts: readonly SizeChart[],
  options: ChooseLineOptions = {},
): BatchLine {
  const parsed = parsePersonJson(text);
  if (parsed === undefined) {
    const facts = { line: options.line ?? 1 };
    return issueLine(null, [createIssue(tapewiseIssues, "batch-line-not-json", { received: text, facts })]);
  }
  const answer = choosePerson(parsed.value, charts, options);
  if (parsed.repeats.length === 0) return answer;
  return { id: answer.id, issues: [...parsed.repeats.map(summariseIssue), ...(answer.issues ?? [])] };
}
