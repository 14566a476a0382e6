export type { Belief, Beliefs } from "./belief.ts";
export {
  type ChoiceColumns,
  chooseColumns,
  createChoiceColumns,
  type PeopleColumns,
} from "./columns/choose-columns.ts";
export { chooseRow } from "./columns/choose-row.ts";
export { columnReasons, columnVerdicts } from "./columns/column-codes.ts";
export type { ColumnPlan } from "./columns/column-plan.ts";
export { type ColumnRow, createRow } from "./columns/column-row.ts";
export { safeCompileColumns } from "./columns/compile-columns.ts";
export type { KnownOfPeople } from "./columns/known-of-people.ts";
export { spreadsAfterLooks } from "./columns/spreads-after-looks.ts";
export { compare } from "./compare.ts";
export type { Comparison, RankedChart } from "./comparison.ts";
export { type ComparisonCode, comparisonTexts } from "./comparison-texts.ts";
export { formBeliefs } from "./form-beliefs.ts";
export { holdAgainst } from "./hold-against.ts";
export { fitIssues } from "./issues.ts";
export { type NextStepCode, nextStepTexts } from "./next-steps.ts";
export { type BuildFeature, buildFeatures, type Person, type RecommendOptions } from "./person.ts";
export { pickSizes, type SizePick } from "./pick-sizes.ts";
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
