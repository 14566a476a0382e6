import type { Issue } from "@tapewise/outcome";
import type { IssueSummary } from "./choice-line.ts";

/** An issue without what only a file has, and with its facts where there are any. */
export function summariseIssue(issue: Issue): IssueSummary {
  const { code, severity, path, message, received, expected, facts } = issue;
  const summary = { code, severity, path, message, received, expected };
  return Object.keys(facts).length === 0 ? summary : { ...summary, facts };
}
