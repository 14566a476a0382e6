export type { Basis, ErrorSize, Finding, Origin, StandardName } from "./basis.ts";
export type { Caution, CautionMoment } from "./cautions/caution.ts";
export { type CautionCode, cautionCodes } from "./cautions/caution-code.ts";
export { cautions } from "./cautions/data.ts";
export { cautionsFor } from "./cautions-for.ts";
export { dimension } from "./dimension.ts";
export type {
  Dimension,
  DimensionGuide,
  DimensionKind,
  DimensionNames,
  Slip,
  Step,
  Way,
} from "./dimension-entry.ts";
export { type DimensionId, dimensionIds } from "./dimension-id.ts";
export { dimensionKind } from "./dimension-kind.ts";
export { dimensionName } from "./dimension-name.ts";
export { type DimensionMatch, findDimension } from "./find-dimension.ts";
export { type MeasuredBy, measurers, type Tool, tools } from "./hands-and-tools.ts";
export { landmarksIssues } from "./issues.ts";
export { landmark } from "./landmark.ts";
export type { Confusion, Landmark, Shift } from "./landmark-entry.ts";
export { type LandmarkId, landmarkIds } from "./landmark-id.ts";
export { landmarks } from "./landmarks/data.ts";
export { type AmbiguousTerm, ambiguousTerms } from "./names/ambiguous-terms.ts";
export { dimensionNames } from "./names/data.ts";
export { type AgeGroup, plausibleLimits } from "./plausible-limits.ts";
export { type ReadingHabit, readingPractice } from "./reading-practice.ts";
export { parseDimension, safeParseDimension } from "./safe-parse-dimension.ts";
export { type Source, sources } from "./sources/data.ts";
export { type SourceId, sourceIds } from "./sources/source-id.ts";
export { surveyFigures } from "./survey/data.ts";
export {
  childLowerPercent,
  type LimitRule,
  limitRules,
  type WideningRule,
  wideningRules,
} from "./survey/limit-rules.ts";
export type { SurveyFigures } from "./survey/survey-figures.ts";
export { meanCurveSurplusMm, torsoFromHeights } from "./torso-from-heights.ts";
