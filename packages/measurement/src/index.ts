export { anticipateUncertainty, anticipateUnchecked } from "./anticipate.ts";
export type { Anticipation } from "./anticipation.ts";
export { assumeConditions, type Conditions, type KnownConditions } from "./conditions.ts";
export { errorDefaults } from "./data.ts";
export type { ErrorDefaults, HandError, ToolError } from "./error-defaults.ts";
export type { Basis, BudgetLine, BudgetSource, Coverage, Estimate, MethodBasis, Spread } from "./estimate.ts";
export { estimateDifference } from "./estimate-difference.ts";
export type { EstimateInput } from "./estimate-input.ts";
export { agreementFigure } from "./figure/agreement-figure.ts";
export { drawStudyFigure } from "./figure/draw-study-figure.ts";
export { errorFigure } from "./figure/error-figure.ts";
export { readingsFigure } from "./figure/readings-figure.ts";
export type {
  AgreementFigure,
  ErrorFigure,
  ReadingsFigure,
  StudyFigure,
  StudyFigureText,
} from "./figure/study-figure.ts";
export { studyFigures } from "./figure/study-figures.ts";
export { type StudyPage, studyPage } from "./figure/study-page.ts";
export { type GrubbsResult, grubbsCriticalValue, grubbsTest } from "./grubbs.ts";
export { measurementIssues } from "./issues.ts";
export type { AverageSpread, AveragingResult } from "./lesson/average-runs.ts";
export { lessonSlip } from "./lesson/data.ts";
export { type DrawnSeries, drawReadings, type SeriesToDraw } from "./lesson/draw-readings.ts";
export { type ExpectedError, expectedMeanError } from "./lesson/expected-error.ts";
export { type HistogramBar, histogramOf } from "./lesson/histogram-of.ts";
export type { LandmarkSlip, LessonError } from "./lesson/lesson-error.ts";
export { lessonErrorFromDefaults } from "./lesson/lesson-error-from-defaults.ts";
export { type ClassLesson, resampleAveraging } from "./lesson/resample-averaging.ts";
export { type RunningMeanOptions, type RunningPoint, runningMean } from "./lesson/running-mean.ts";
export {
  type AveragingLesson,
  type AveragingOptions,
  simulateAveraging,
} from "./lesson/simulate-averaging.ts";
export { parseEstimate, safeEstimate } from "./make-estimate.ts";
export { anticipateError } from "./planning/anticipate-error.ts";
export { type AveragingRow, averagingTable } from "./planning/averaging-table.ts";
export { chanceOfRightSize, type LengthBelief } from "./planning/chance-of-right-size.ts";
export { compareNextWays, type NextWayComparison, type NextWayRow } from "./planning/compare-next-ways.ts";
export type { NextConditions, NextWay } from "./planning/next-ways.ts";
export {
  planReadings,
  type ReachablePlan,
  type ReadingPlan,
  type UncertaintyTarget,
  type UnreachablePlan,
} from "./planning/plan-readings.ts";
export {
  type ChoicePlan,
  type ChoiceToPlan,
  planReadingsForChoice,
} from "./planning/plan-readings-for-choice.ts";
export type { ReadingError, ReadingErrorDegrees } from "./planning/reading-error.ts";
export type { SizeBounds } from "./planning/size-regions.ts";
export { type IccTestPlan, subjectsForIccTest } from "./planning/subjects-for-icc-test.ts";
export { type IccWidthPlan, subjectsForIccWidth } from "./planning/subjects-for-icc-width.ts";
export { type LimitsPlan, subjectsForLimits } from "./planning/subjects-for-limits.ts";
export { subjectsForTem, type TemBounds, type TemPlan, temBounds } from "./planning/subjects-for-tem.ts";
export { type KnownVariance, poolSpread } from "./pool-spread.ts";
export type { Prior } from "./prior.ts";
export { type ReadReadingsOptions, safeReadReadings } from "./read-readings.ts";
export { readingsFor } from "./readings-for.ts";
export { type AnovaLine, type OneWayAnova, oneWayAnova } from "./reliability/anova-one-way.ts";
export { type TwoWayAnova, twoWayAnova } from "./reliability/anova-two-way.ts";
export type { BiasSlope } from "./reliability/bias-slope.ts";
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
} from "./reliability/bland-altman-repeats.ts";
export {
  type CochranResult,
  cochranCriticalValue,
  cochranTest,
  type SampleVariance,
} from "./reliability/cochran.ts";
export {
  type AllowanceComparison,
  type AllowancePairs,
  safeCompareAllowance,
} from "./reliability/compare-allowance.ts";
export { observerAllowances } from "./reliability/data.ts";
export {
  type DigitCounts,
  type DigitPreference,
  safeDigitPreference,
} from "./reliability/digit-preference.ts";
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
export type { DifferencePoint, IntervalEstimate, RepeatedPair } from "./reliability/interval-estimate.ts";
export {
  type DetectableChangeOptions,
  minimalDetectableChange,
  standardErrorOfMeasurement,
} from "./reliability/minimal-detectable-change.ts";
export type { ObserverAllowance } from "./reliability/observer-allowance.ts";
export type { Precision, PrecisionFinding, SubjectPrecision } from "./reliability/precision.ts";
export { type RepeatTrend, type StudyTrend, safeRepeatTrend } from "./reliability/repeat-trend.ts";
export { type PrecisionOptions, safePrecision } from "./reliability/safe-precision.ts";
export type { DetectableChange, StudyReport, StudySize } from "./reliability/study-report.ts";
export { type StudyReportOptions, summariseStudy } from "./reliability/summarise-study.ts";
export { safeTechnicalError, type TechnicalErrorOptions } from "./reliability/technical-error.ts";
export type { TechnicalError, Tem, TemIntervalMethod } from "./reliability/tem.ts";
export {
  type ComponentsOptions,
  type ComponentTerm,
  type StudyComponents,
  safeVarianceComponents,
} from "./reliability/variance-components.ts";
export { varianceInterval, type WeightedMeanSquare } from "./reliability/variance-interval.ts";
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
export { adviseStudy } from "./telling/advise-study.ts";
export { tellStudy } from "./telling/tell-study.ts";
export type { StudyAdvice, ToldSection, ToldTable, ToldUnit } from "./telling/told.ts";
export type { InputCorrelation } from "./uncertainty/correlations.ts";
export { describeInput, type InputMoments } from "./uncertainty/describe-input.ts";
export { differenceOfHeights } from "./uncertainty/difference-of-heights.ts";
export { type ExpandedUncertainty, expandUncertainty } from "./uncertainty/expand-uncertainty.ts";
export type {
  ArcsineInput,
  CurvilinearTrapezoidInput,
  InputDistribution,
  NormalInput,
  RectangularInput,
  StudentTInput,
  TrapezoidalInput,
  TriangularInput,
} from "./uncertainty/input-distribution.ts";
export { type CorrelatedMean, meanOfCorrelated } from "./uncertainty/mean-of-correlated.ts";
export type { MeasurementModel, UncertainInput } from "./uncertainty/measurement-model.ts";
export { numericalTolerance } from "./uncertainty/numerical-tolerance.ts";
export {
  type DistributedInput,
  propagateDistributions,
  type Simulation,
  type SimulationProblem,
} from "./uncertainty/propagate-distributions.ts";
export {
  type Propagation,
  type PropagationLine,
  type PropagationProblem,
  propagateUncertainty,
} from "./uncertainty/propagate-uncertainty.ts";
export type { SecondOrder } from "./uncertainty/second-order.ts";
export { stateUncertainty, type UncertaintyStatementOptions } from "./uncertainty/state-uncertainty.ts";
export {
  type JoinOptions,
  type SharedScale,
  sumOfJoined,
  type UncertainReading,
} from "./uncertainty/sum-of-joined.ts";
export type { CoverageInterval, SimulatedOutput } from "./uncertainty/summarise-output.ts";
export { type Validation, validatePropagation } from "./uncertainty/validate-propagation.ts";
export {
  type CombinedUncertainty,
  combineUncertainties,
  type UncertaintyComponent,
} from "./welch-satterthwaite.ts";
