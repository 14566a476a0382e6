export type { Belief, Beliefs } from "./belief.ts";
export { compare } from "./compare.ts";
export type { Comparison, RankedChart } from "./comparison.ts";
export { type ComparisonCode, comparisonTexts } from "./comparison-texts.ts";
export { formBeliefs } from "./form-beliefs.ts";
export { holdAgainst } from "./hold-against.ts";
export { fitIssues } from "./issues.ts";
export { type NextStepCode, nextStepTexts } from "./next-steps.ts";
export { type BuildFeature, buildFeatures, type Person, type RecommendOptions } from "./person.ts";
export { defaultPolicy, type FitPolicy } from "./policy.ts";
export type { PlainReason, Reason } from "./reason.ts";
export { type ReasonCode, reasonTexts } from "./reasons.ts";
export { recommend } from "./recommend.ts";
export type {
  BeltFit,
  DecidingPart,
  DimensionBelief,
  DimensionFit,
  OutsideRange,
  Recommendation,
  SizeFit,
  Verdict,
} from "./recommendation.ts";
export type { IntervalFit, UncertainLength } from "./uncertain-length.ts";
export { writePercent } from "./write-percent.ts";
