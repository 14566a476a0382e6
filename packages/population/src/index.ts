export type { Separator } from "@tapewise/tables";
export { normalBoxProbability } from "./box/normal-box.ts";
export { menReference, womenReference } from "./data.ts";
export {
  type AndersonDarlingOptions,
  andersonDarling,
  andersonDarlingCriticalValues,
  type GoodnessOfFit,
} from "./fitting/anderson-darling.ts";
export {
  type BootstrapInterval,
  type BootstrapOptions,
  bootstrapInterval,
} from "./fitting/bootstrap-interval.ts";
export { type ChooseFamilyOptions, chooseFamily, type RankedFit } from "./fitting/choose-family.ts";
export type { FittedFamily } from "./fitting/family-model.ts";
export { type Fit, type FittedParameter, fitDistribution } from "./fitting/fit-distribution.ts";
export { samplePercentile } from "./fitting/percentile.ts";
export { type PercentileInterval, percentileInterval } from "./fitting/percentile-interval.ts";
export { type QqPoint, qqPoints } from "./fitting/qq-points.ts";
export { type TrimmedSummary, trimmedSummary } from "./fitting/trimmed-summary.ts";
export { type WeightedSummary, weightedSummary } from "./fitting/weighted-summary.ts";
export { populationIssues } from "./issues.ts";
export { type EmpiricalFigures, type EmpiricalJoint, empiricalJoint } from "./joint/empirical-joint.ts";
export type { About, Box, BoxProbability, JointModel, Known, Variable } from "./joint/joint-model.ts";
export { type JointPart, type MixtureJoint, mixtureJoint } from "./joint/mixture-joint.ts";
export { type NormalFigures, type NormalJoint, normalJoint } from "./joint/normal-joint.ts";
export { reweight } from "./joint/reweight.ts";
export { variableUnit } from "./joint/variable.ts";
export { type LognormalJoint, withLognormal } from "./joint/with-lognormal.ts";
export { type PriorFromOptions, priorFrom } from "./priors/prior-from.ts";
export { type QuestionedReading, questionGiven, type ReadingCheck } from "./priors/question-given.ts";
export type { ReferenceCut } from "./reference/figures-of.ts";
export type { ReferenceVariable } from "./reference/reference-figures.ts";
export { referenceMixture } from "./reference/reference-mixture.ts";
export { referencePopulation } from "./reference/reference-population.ts";
export { type ReferenceRow, referenceTable } from "./reference/reference-table.ts";
export type { ReferencePopulation } from "./reference-population.ts";
export { type ReferencePriorInput, referencePrior } from "./reference-prior.ts";
export type { ComponentsOptions, VarianceComponents } from "./repeats/components.ts";
export type { Readings } from "./repeats/observe-spread.ts";
export {
  type TruePercentile,
  type TruePercentileOptions,
  truePercentiles,
} from "./repeats/true-percentiles.ts";
export { varianceComponents } from "./repeats/variance-components.ts";
export { readSurvey, safeReadSurvey } from "./survey/read-survey.ts";
export type {
  LengthColumn,
  MassColumn,
  Survey,
  SurveyMapping,
  SurveyOptions,
  SurveyPerson,
} from "./survey/survey.ts";
export { safeSurveyNormal, safeSurveyPeople } from "./survey/survey-joint.ts";
export { type SurveySample, surveySample } from "./survey/survey-sample.ts";
export type { Distribution, Family } from "./univariate/distribution.ts";
export { empiricalDistribution } from "./univariate/empirical.ts";
export { type LognormalParameters, lognormalDistribution } from "./univariate/lognormal.ts";
export { type MixturePart, mixtureDistribution } from "./univariate/mixture.ts";
export { type NormalParameters, normalDistribution } from "./univariate/normal.ts";
export { owensT } from "./univariate/owens-t.ts";
export { type SkewNormalParameters, skewNormalDistribution } from "./univariate/skew-normal.ts";
export { type TruncatedNormalParameters, truncatedNormal } from "./univariate/truncated-normal.ts";
