export { auditChart } from "./audit-chart.ts";
export { auditChartText } from "./audit-chart-text.ts";
export type {
  AuditFinding,
  CapacityFinding,
  ChartTable,
  ImplausibleFinding,
  InferredFinding,
  NeighbourFinding,
  OpenEndFinding,
  RelationFinding,
  Slip,
  SuspiciousFinding,
  UnmeasuredFinding,
  UnstatedGirthFinding,
  WidthFinding,
} from "./audit-finding.ts";
export { auditReport } from "./audit-report.ts";
export type { BeltData, ChartData, RangeData, RangeEndsData, RangesData, SizeData } from "./chart-data.ts";
export type { ChartDefaults, ChartFormat, ChartOptions, ParseChartOptions } from "./chart-options.ts";
export { chartToData } from "./chart-to-data.ts";
export { inferNominalIntervals } from "./infer-nominal-intervals.ts";
export { chartsIssues } from "./issues.ts";
export { parseChart, safeParseChart } from "./parse-chart.ts";
export { safeChartFromData } from "./safe-chart-from-data.ts";
export { safeParseChartCsv } from "./safe-parse-chart-csv.ts";
export { safeParseChartJson } from "./safe-parse-chart-json.ts";
export {
  type BeltSize,
  type ChartDimension,
  type Cut,
  chartDimensions,
  cuts,
  type HarnessKind,
  harnessKinds,
  type Size,
  type SizeChart,
  type SizeRange,
  type SizeRanges,
  type SwappablePart,
  swappableParts,
} from "./size-chart.ts";
export { sizesInOrder } from "./sizes-in-order.ts";
export { speakDimension } from "./speak-dimension.ts";
