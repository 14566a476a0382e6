import { adviseStudy, type Study, type StudyReport } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import { summariseIssue } from "../../batch/summarise-issue.ts";
import { placedIssue } from "../report/placed-issue.ts";

/** The whole answer for programs: what was read, what it tells, what to do next. Lengths in mm. */
export function studyData(
  study: Study,
  report: StudyReport,
  issues: readonly Issue[],
  unit: "cm" | "in",
): unknown {
  const { issues: doubts, ...told } = report;
  const { subjects, measurers, repeats, readings, missing, setAside } = study;
  return {
    study: { subjects, measurers, repeats, readings, missing, setAside },
    report: told,
    next: adviseStudy(report, unit),
    issues: issues.map(placedIssue),
    doubts: doubts.map(summariseIssue),
  };
}
