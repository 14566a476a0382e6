import { createIssue, type Issue, type IssueDetails } from "@tapewise/outcome";
import type { Cell } from "@tapewise/tables";
import { populationIssues } from "../issues.ts";

/** Makes an issue of a survey, at the place of a cell. */
export type ReportSurvey = (
  code: keyof typeof populationIssues,
  details: Omit<IssueDetails, "place">,
  cell?: Pick<Cell, "line" | "column"> | undefined,
) => Issue;

/** A reporter that knows the file's name. */
export function reportSurvey(file: string | undefined): ReportSurvey {
  return (code, details, cell) => {
    const place = cell && { line: cell.line, column: cell.column, ...(file === undefined ? {} : { file }) };
    return createIssue(populationIssues, code, { ...details, ...(place === undefined ? {} : { place }) });
  };
}
