import type { ComparisonCode } from "./comparison-texts.ts";
import type { Reason } from "./reason.ts";
import type { Recommendation } from "./recommendation.ts";

/** One pack in a comparison. */
export interface RankedChart {
  /** 1 is the best. */
  readonly rank: number;
  /** The position of its chart in the list that was given, from 0 on. */
  readonly index: number;
  readonly recommendation: Recommendation;
  /** Why it stands before the next one; absent for the last. */
  readonly beforeNext?: Reason<ComparisonCode>;
}

/** One person held against many packs, best first. */
export interface Comparison {
  readonly ranked: readonly RankedChart[];
}
