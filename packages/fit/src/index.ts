export { type Belief, type Beliefs, formBeliefs } from "./belief.ts";
export { compare } from "./compare.ts";
export type { Comparison, RankedChart } from "./comparison.ts";
export { type ComparisonCode, comparisonTexts } from "./comparison-texts.ts";
export { fitIssues } from "./issues.ts";
export { holdAgainst, type IntervalFit, type UncertainLength } from "./location-scale.ts";
export { type BuildFeature, buildFeatures, type Person, type RecommendOptions } from "./person.ts";
export { defaultPolicy, type FitPolicy } from "./policy.ts";
export type { Reason } from "./reason.ts";
export { type NextStepCode, nextStepTexts, type ReasonCode, reasonTexts } from "./reasons.ts";
export { recommend } from "./recommend.ts";
export type {
  BeltFit,
  DimensionBelief,
  DimensionFit,
  OutsideRange,
  Recommendation,
  SizeFit,
  Verdict,
} from "./recommendation.ts";
export { writePercent } from "./write-reason.ts";
