import type { ChartDimension, SizeRange } from "@tapewise/charts";
import type { Estimate } from "@tapewise/measurement";
import type { Issue } from "@tapewise/outcome";
import type { NextStepCode } from "./next-steps.ts";
import type { Reason } from "./reason.ts";
import type { ReasonCode } from "./reasons.ts";

/**
 * What the choice amounts to.
 *
 * - `fits`: the picked size is likelier than not to fit (from the policy's `fitProbability` on).
 * - `two-sizes-fit`: another one is so too, and some bodies fit both.
 * - `between-sizes`: no size is likelier than not to fit and neither end of the chart is passed, or two
 *   sizes that exclude each other are about equally likely.
 * - `outside-the-range`: an end of the chart is passed, in the dimension that `outside` names.
 * - `measure-again`: whatever of these holds so far, a look at the body that `next` names has a real chance
 *   to change it, a reading that decides is questioned, or no length that a harness is made to is known.
 */
export type Verdict = "fits" | "two-sizes-fit" | "between-sizes" | "outside-the-range" | "measure-again";

/** The part of a pack that a verdict is about: the pack in its size, or a hip belt that is sized apart. */
export type DecidingPart = "pack" | "belt";

/** How one dimension of the body sits in one size. */
export interface DimensionFit {
  readonly dimension: ChartDimension;
  readonly range: SizeRange;
  /** Probability that the body dimension lies in the size's interval. */
  readonly probability: number;
  /** Probability that it lies below the interval (the size is too big). */
  readonly probabilityBelow: number;
  /** Probability that it lies above the interval (the size is too small). */
  readonly probabilityAbove: number;
  /** Expected distance from the dimension to the interval, in mm; 0 for certain fit. */
  readonly expectedMisfitMm: number;
}

/** How one size fits. */
export interface SizeFit {
  readonly size: string;
  /** Probability that every judged dimension lies in the size's intervals; what it does not state has no bounds. */
  readonly probability: number;
  /** Sum over the judged dimensions of the expected distance to the interval, in mm. */
  readonly expectedMisfitMm: number;
  readonly dimensions: readonly DimensionFit[];
  readonly capacityLitres?: number;
}

/** A hip belt that is sized apart from the harness, and how it fits. */
export interface BeltFit {
  readonly pick: string;
  readonly probability: number;
  readonly sizes: readonly SizeFit[];
}

/** What is believed of one dimension after readings and prior are put together. */
export interface DimensionBelief {
  readonly dimension: ChartDimension;
  readonly meanMm: number;
  readonly sdMm: number;
  /** `Infinity` where the spread counts as known. */
  readonly degreesOfFreedom: number;
  readonly from: "readings" | "prior" | "readings-and-prior";
}

/** Which end of a chart a person lies beyond. */
export interface OutsideRange {
  readonly dimension: ChartDimension;
  readonly end: "below" | "above";
  /** Expected distance, in mm, to the nearest interval of the chart. */
  readonly byMm: number;
  readonly probability: number;
}

/**
 * The answer for one person and one chart. Plain data that JSON can carry; as JSON has no infinity,
 * `JSON.stringify` writes `null` for an open end of an interval and for unlimited degrees of freedom, and
 * for nothing else.
 */
export interface Recommendation {
  readonly chart: string;
  readonly maker?: string;
  readonly product?: string;
  readonly verdict: Verdict;
  /** What set the verdict: the pack may fit in its size where no hip belt of it does. */
  readonly decidedBy: DecidingPart;
  /** The best size; it is named even where it does not fit well, and the verdict says so. */
  readonly pick: string;
  /** Probability that the picked size fits in every judged dimension; a belt that is sized apart has its own. */
  readonly probability: number;
  /** Every size that could be judged, in the chart's order. */
  readonly sizes: readonly SizeFit[];
  /** Sizes that state nothing about the dimension that the chart turns on, and could not be compared. */
  readonly unjudgedSizes: readonly string[];
  readonly belt?: BeltFit;
  readonly outside?: OutsideRange;
  /** Why this size. */
  readonly reasons: readonly Reason<ReasonCode>[];
  /** What to do next, the most useful first. */
  readonly next: readonly Reason<NextStepCode>[];
  readonly beliefs: readonly DimensionBelief[];
  readonly estimates: readonly Estimate[];
  /** Doubts about the readings: `estimate-unlikely`, `estimate-implausible`. */
  readonly questions: readonly Issue[];
}
