import { readingIssues } from "./reading-issues.ts";
import { agreementIssues } from "./reliability/agreement-issues.ts";
import { componentIssues } from "./reliability/component-issues.ts";
import { temIssues } from "./reliability/tem-issues.ts";
import { studyIssues } from "./study/study-issues.ts";

type MeasurementIssues = typeof readingIssues &
  typeof componentIssues &
  typeof agreementIssues &
  typeof studyIssues &
  typeof temIssues;

/**
 * What can be wrong with, or doubtful about, readings. Errors keep an estimate from being made; warnings are questions.
 * Whoever gives issues takes the part that they come from, so that a page that only estimates loads no words on studies.
 */
export const measurementIssues: MeasurementIssues = {
  ...readingIssues,
  ...componentIssues,
  ...agreementIssues,
  ...studyIssues,
  ...temIssues,
};
