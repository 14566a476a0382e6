import type { GrubbsResult } from "../grubbs.ts";
import type { CochranResult } from "./cochran.ts";
import type { IntervalEstimate } from "./interval-estimate.ts";

/** Precision of the readings of one subject, after ISO 5725-2. */
export interface SubjectPrecision {
  readonly subject: string;
  /** p: measurers who have read the subject. */
  readonly measurers: number;
  readonly readings: number;
  readonly meanMm: number;
  /** sr; absent where nobody read the subject twice. */
  readonly repeatabilityMm?: number;
  /** sL: 0 where the variances would give a negative one; absent without sr or with one measurer. */
  readonly betweenMm?: number;
  /** sR = √(sr² + sL²). */
  readonly reproducibilityMm?: number;
}

/** A finding of the screening: `outlier` at 1 %, `straggler` at 5 % but not at 1 % (ISO 5725-2, 7.3). */
export interface PrecisionFinding {
  readonly kind: "outlier" | "straggler";
  readonly subject: string;
  readonly measurer: string;
  readonly test: CochranResult | GrubbsResult;
}

/** Repeatability and reproducibility of a study. */
export interface Precision {
  readonly confidence: number;
  /** sr in mm, pooled over subjects; exact interval for normal errors of one size. */
  readonly repeatability: IntervalEstimate;
  /** sL in mm, pooled over subjects. */
  readonly betweenMm: number;
  /** sR in mm. */
  readonly reproducibilityMm: number;
  /** What two readings by one measurer differ by at most in 95 % of cases: `limitFactor` · sr. */
  readonly repeatabilityLimitMm: number;
  /** What two readings by two measurers differ by at most in 95 % of cases: `limitFactor` · sR. */
  readonly reproducibilityLimitMm: number;
  readonly limitFactor: number;
  readonly perSubject: readonly SubjectPrecision[];
  /** Cells that scatter more than others (Cochran), over the whole study. */
  readonly variances: readonly PrecisionFinding[];
  /** Means apart from those of the other measurers (Grubbs), in subjects whom three or more have read. */
  readonly means: readonly PrecisionFinding[];
}
