import { createIssue, type Facts, type Issue, type IssuePath, type Place } from "@tapewise/outcome";
import { chartsIssues } from "./issues.ts";

/** What is known of an issue of this package; only text has places. */
export interface ChartIssueDetails {
  readonly path?: IssuePath;
  readonly received?: unknown;
  readonly facts?: Facts;
  readonly place?: Place | undefined;
}

/** An issue of this package. */
export function chartIssue(code: keyof typeof chartsIssues, { place, ...details }: ChartIssueDetails): Issue {
  return createIssue(chartsIssues, code, place === undefined ? details : { ...details, place });
}
