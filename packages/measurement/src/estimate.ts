import type { DimensionId } from "@tapewise/landmarks";
import type { LengthReading, Millimetres } from "@tapewise/units";
import type { KnownConditions } from "./conditions.ts";

/** What a figure about a method rests on before anybody reads. */
export type MethodBasis = "stated" | "source" | "common-practice" | "assumption";

/**
 * Where one figure of the error budget comes from: the readings alone, what is known of the method, or
 * both pooled. With three readings most of a pooled figure is still the method's.
 */
export type Basis = "readings" | MethodBasis | `readings-and-${MethodBasis}`;

/** A source of uncertainty. */
export type BudgetSource =
  | "repeatability"
  | "resolution"
  | "landmark-finding"
  | "method-bias"
  | "tool-scale"
  | "cord-transfer"
  | "rule-joints"
  | "stated-bias";

/** One line of the error budget (GUM 8, table of components). */
export interface BudgetLine {
  readonly source: BudgetSource;
  /** GUM type of evaluation: A where the spread of these readings has a say in it, B otherwise. */
  readonly type: "A" | "B";
  readonly distribution: "normal" | "rectangular";
  /** Standard uncertainty of the mean from this source alone, in mm. */
  readonly uncertaintyMm: number;
  /** Degrees of freedom; `Infinity` where the figure counts as known. */
  readonly degreesOfFreedom: number;
  /** Part of the combined variance, 0 to 1. */
  readonly share: number;
  /** Whether more readings of the same kind make it smaller. */
  readonly averagesOut: boolean;
  readonly basis: Basis;
}

/** The interval that holds the dimension with the stated probability (GUM 6 and G). */
export interface Coverage {
  readonly probability: number;
  /** Coverage factor: Student's t quantile at the effective degrees of freedom. */
  readonly factor: number;
  readonly lowerMm: number;
  readonly upperMm: number;
}

/** How the readings of one dimension scatter. */
export interface Spread {
  /** Sample standard deviation of the readings in mm; absent for one reading. */
  readonly sampleMm?: number;
  /**
   * Standard deviation, in mm, of readings among themselves: the sample pooled with what the method is known to
   * show. Rounding that all readings share does not show in it.
   */
  readonly pooledMm: number;
  /** Degrees of freedom of the pooled figure. */
  readonly degreesOfFreedom: number;
}

/**
 * What the readings say of one dimension: a value, its combined standard uncertainty with effective
 * degrees of freedom, and how it came about.
 */
export interface Estimate {
  readonly dimension: DimensionId;
  /** Mean of the readings. */
  readonly mm: Millimetres;
  /** Combined standard uncertainty in mm. */
  readonly uncertaintyMm: number;
  /** Effective degrees of freedom (Welch–Satterthwaite); may be `Infinity`. */
  readonly degreesOfFreedom: number;
  readonly coverage: Coverage;
  readonly readings: readonly LengthReading[];
  readonly spread: Spread;
  /** The part, in mm, that no number of further readings of the same kind removes. */
  readonly lastingMm: number;
  /** The part, in mm, of one reading that averaging shrinks. */
  readonly perReadingMm: number;
  readonly budget: readonly BudgetLine[];
  /** The conditions that the budget is made for, with what had to be assumed: nothing where the error is stated. */
  readonly conditions: KnownConditions;
}
