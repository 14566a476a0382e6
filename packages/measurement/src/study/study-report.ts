import { createIssue, type Facts, type Issue, type IssuePath } from "@tapewise/outcome";
import { placeOf } from "@tapewise/tables";
import { studyIssues } from "./study-issues.ts";

/** What is known of an issue beyond its code. */
export interface StudyIssueDetails {
  readonly path?: IssuePath;
  readonly received?: unknown;
  readonly facts?: Facts;
  /** Anything with a line and a column, such as a cell. */
  readonly at?: { readonly line: number; readonly column: number } | undefined;
}

/** Makes issues of one study. */
export type StudyReport = (code: keyof typeof studyIssues, details: StudyIssueDetails) => Issue;

/** A maker of issues that knows the file's name. */
export function studyReport(file: string | undefined): StudyReport {
  return (code, { at, ...details }) =>
    createIssue(studyIssues, code, {
      ...details,
      ...(at === undefined ? {} : { place: placeOf(at.line, at.column, file) }),
    });
}
