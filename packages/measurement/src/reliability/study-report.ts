import type { DimensionId } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import type { MeasurerAgreement } from "./bland-altman-of-study.ts";
import type { AllowanceComparison } from "./compare-allowance.ts";
import type { DigitPreference } from "./digit-preference.ts";
import type { ComponentIcc } from "./icc-of-components.ts";
import type { Precision } from "./precision.ts";
import type { StudyTrend } from "./repeat-trend.ts";
import type { TechnicalError } from "./tem.ts";

/** How large a study is, and how much of it there is. */
export interface StudySize {
  readonly subjects: number;
  readonly measurers: number;
  readonly repeats: number;
  /** Readings that take part. */
  readonly readings: number;
  readonly missing: number;
  readonly setAside: number;
}

/** The smallest change of one person that is more than error, in mm, from one reading before and one after. */
export interface DetectableChange {
  /** Both readings by the same measurer; absent where the error within measurers is not known. */
  readonly sameMeasurerMm?: number;
  /** By any two; absent where the error between measurers is not known. */
  readonly anyMeasurerMm?: number;
}

/** All that a study tells. What it cannot tell is absent, and an issue says why. */
export interface StudyReport {
  readonly dimension?: DimensionId;
  readonly confidence: number;
  readonly size: StudySize;
  readonly technicalError?: TechnicalError;
  readonly precision?: Precision;
  readonly correlation?: ComponentIcc;
  /** Every pair of measurers who share subjects enough. */
  readonly agreement: readonly MeasurerAgreement[];
  readonly detectableChange: DetectableChange;
  readonly trend?: StudyTrend;
  readonly digits?: DigitPreference;
  /** Absent, without an issue, where no limit was published for the dimension. */
  readonly allowance?: AllowanceComparison;
  /** Each with the name of its part at the beginning of its path. */
  readonly issues: readonly Issue[];
}
