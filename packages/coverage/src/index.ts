export { chartCoverage } from "./chart-coverage.ts";
export {
  type ChoiceErrors,
  choiceErrors,
  type DrawOptions,
  type Measuring,
  type SizeGiven,
} from "./choice-errors.ts";
export type { Charts, Coverage, CoverageOptions, CoveragePart, Outside, SizeCoverage } from "./coverage.ts";
export { type CutPlan, type CutRange, type CutRequest, cutSizes, type SizeCuts } from "./cut-sizes.ts";
export {
  type ChartFigure,
  type ChartFigureOptions,
  chartFigure,
  type FigureCurve,
  type FigureRow,
} from "./figure/chart-figure.ts";
export { drawChartFigure } from "./figure/draw-chart-figure.ts";
export { drawGrowthFigure } from "./figure/draw-growth-figure.ts";
export { describeSample, type FigureText, type FigureUnit, writeShare } from "./figure/figure-text.ts";
export { type GrowthFigure, type GrowthFigureOptions, growthFigure } from "./figure/growth-figure.ts";
export { coverageIssues } from "./issues.ts";
export { type OverlapEffect, type OverlapRequest, overlapEffect } from "./overlap-effect.ts";
export { type PickStretch, pickStretches } from "./pick-stretches.ts";
export type { Share } from "./share.ts";
export { type SizeStock, type Stock, type StockRequest, type StockRule, stockFor } from "./stock-for.ts";
export { type SizePart, type StockShares, stockShares } from "./stock-shares.ts";
export type { Band, SurveyOptions } from "./survey.ts";
export { type StockTrial, type StockTried, tryStock } from "./try-stock.ts";
