import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { Interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { About } from "@tapewise/population";
import type { Share } from "./share.ts";
import type { Band, SurveyOptions } from "./survey.ts";

/** One chart or a shelf of them. */
export type Charts = SizeChart | readonly SizeChart[];

/** Whom one size serves. */
export interface SizeCoverage {
  readonly chart: string;
  readonly size: string;
  /** People whom the size fits. */
  readonly served: Share;
  /** People whom it fits and no other. */
  readonly only: Share;
}

/** Who lies beside the ranges of one dimension, whatever the others say. */
export interface Outside {
  readonly dimension: DimensionId;
  readonly below: Share;
  readonly gaps: readonly { readonly within: Interval; readonly people: Share }[];
  readonly above: Share;
}

/** Whom charts serve among some people. */
export interface Coverage {
  /** Whom the shares are of, with source and caveat. */
  readonly people: About;
  readonly sizes: readonly SizeCoverage[];
  /** Somebody whom at least one size fits. */
  readonly served: Share;
  readonly byOne: Share;
  readonly bySeveral: Share;
  readonly byNone: Share;
  readonly outside: readonly Outside[];
  /** The dimensions that people were held against. */
  readonly judged: readonly DimensionId[];
  /** What the charts state and the population does not know: with it they serve as many or fewer. */
  readonly leftOut: readonly ChartDimension[];
  /** The parts of a mixture, women and men say, each by itself; empty for other populations. */
  readonly parts: readonly CoveragePart[];
  /** How the bands were made; absent without the size of the survey. */
  readonly band?: Band;
  /** How far off the joint shares may be by computation; 0 for a population that is counted. */
  readonly numericalError: number;
}

/** Whom charts serve among one part of a mixture. */
export interface CoveragePart {
  /** What part of all people this is. */
  readonly weight: number;
  readonly coverage: Coverage;
}

/** What may be said besides chart and population. */
export interface CoverageOptions {
  /** The survey behind the population. Bands are given with it only. */
  readonly survey?: SurveyOptions;
}
