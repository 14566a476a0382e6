import { createIssue, type Facts, type Issue, type IssuePath, type Place } from "@tapewise/outcome";
import { readingIssues } from "./reading-issues.ts";

/** What is known of an issue of this package; only text has places. */
export interface ChartIssueDetails {
  readonly path?: IssuePath;
  readonly received?: unknown;
  readonly facts?: Facts;
  readonly place?: Place | undefined;
}

/** An issue of reading a chart. */
export function chartIssue(
  code: keyof typeof readingIssues,
  { place, ...details }: ChartIssueDetails,
): Issue {
  return createIssue(readingIssues, code, place === undefined ? details : { ...details, place });
}
