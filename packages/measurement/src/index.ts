export { type Anticipation, anticipateUncertainty } from "./anticipate.ts";
export { assumeConditions, type Conditions, type KnownConditions } from "./conditions.ts";
export { errorDefaults } from "./data.ts";
export type { ErrorDefaults, HandError, ToolError } from "./error-defaults.ts";
export type { Basis, BudgetLine, BudgetSource, Coverage, Estimate, MethodBasis, Spread } from "./estimate.ts";
export { estimateDifference } from "./estimate-difference.ts";
export type { EstimateInput } from "./estimate-input.ts";
export { type GrubbsResult, grubbsCriticalValue, grubbsTest } from "./grubbs.ts";
export { measurementIssues } from "./issues.ts";
export { parseEstimate, safeEstimate } from "./make-estimate.ts";
export { type KnownVariance, poolSpread } from "./pool-spread.ts";
export type { Prior } from "./prior.ts";
export { type ReadReadingsOptions, safeReadReadings } from "./read-readings.ts";
export { readingsFor } from "./readings-for.ts";
export { type AnovaLine, type OneWayAnova, oneWayAnova } from "./reliability/anova-one-way.ts";
export { type TwoWayAnova, twoWayAnova } from "./reliability/anova-two-way.ts";
export {
  type BlandAltman,
  type BlandAltmanOptions,
  blandAltman,
  type LimitsMethod,
} from "./reliability/bland-altman.ts";
export {
  type MeasurerAgreement,
  type MeasurerAgreementOptions,
  safeMeasurerAgreement,
} from "./reliability/bland-altman-of-study.ts";
export {
  type Repeatability,
  type RepeatabilityOptions,
  repeatabilityCoefficient,
} from "./reliability/bland-altman-repeatability.ts";
export {
  type BlandAltmanRepeats,
  type BlandAltmanRepeatsOptions,
  blandAltmanRepeats,
  type RepeatedPair,
} from "./reliability/bland-altman-repeats.ts";
export type { BiasSlope } from "./reliability/bland-altman-slope.ts";
export {
  type Icc,
  type IccAnalysis,
  type IccOptions,
  intraclassCorrelations,
} from "./reliability/icc.ts";
export type { IccForm } from "./reliability/icc-form.ts";
export {
  type ComponentIcc,
  type ComponentIccOptions,
  safeComponentIcc,
} from "./reliability/icc-of-components.ts";
export { type StudyIcc, safeStudyIcc } from "./reliability/icc-of-study.ts";
export type { DifferencePoint, IntervalEstimate } from "./reliability/interval-estimate.ts";
export {
  type DetectableChangeOptions,
  minimalDetectableChange,
  standardErrorOfMeasurement,
} from "./reliability/minimal-detectable-change.ts";
export {
  type ComponentsOptions,
  type ComponentTerm,
  type StudyComponents,
  safeVarianceComponents,
} from "./reliability/variance-components.ts";
export { roundingCorrelation } from "./rounding-correlation.ts";
export { type StatementOptions, stateEstimate } from "./state-estimate.ts";
export type { StatedError } from "./stated-error.ts";
export { createStudy, type StudyParts } from "./study/create-study.ts";
export { parseStudy, safeParseStudy } from "./study/safe-parse-study.ts";
export type {
  MissingCell,
  MissingReason,
  SetAsideReading,
  Study,
  StudyCell,
  StudyReading,
} from "./study/study.ts";
export type { StudyLayout, StudyOptions } from "./study/study-options.ts";
export {
  type CombinedUncertainty,
  combineUncertainties,
  type UncertaintyComponent,
} from "./welch-satterthwaite.ts";
