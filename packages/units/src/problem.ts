import {
  createIssue,
  describeReceived,
  type Facts,
  type Failure,
  failure,
  type IssuePath,
} from "@tapewise/outcome";
import { unitsIssues } from "./issues.ts";

/** What stops a reader, before it is made an issue of the caller's path. */
export interface Problem {
  readonly code: keyof typeof unitsIssues;
  readonly facts?: Facts;
}

/** A failure with one issue, from what a reader says is wrong. */
export function problemFailure(problem: Problem, received: unknown, path: IssuePath = []): Failure {
  // A fact may quote the user's text: control characters and lone surrogates stay out of messages.
  const facts: Record<string, string | number> = {};
  for (const [name, fact] of Object.entries(problem.facts ?? {})) facts[name] = printable(fact);
  return failure([createIssue(unitsIssues, problem.code, { path, received, facts })]);
}

function printable(fact: string | number): string | number {
  return typeof fact === "number" ? fact : String(describeReceived(fact));
}
