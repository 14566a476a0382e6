export { chartCoverage } from "./chart-coverage.ts";
export type { Coverage, CoverageOptions, CoveragePart, Outside, SizeCoverage } from "./coverage.ts";
export { coverageIssues } from "./issues.ts";
export type { Charts } from "./plan-charts.ts";
export type { Share } from "./share.ts";
export type { Band, SurveyOptions } from "./survey.ts";
