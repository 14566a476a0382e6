import type { Recommendation } from "./recommendation.ts";
import type { Reason } from "./reason.ts";

/** A stable code for why one pack stands before another. */
export type ComparisonCode =
  | "likelier-fit"
  | "adjustable-for-first-pack"
  | "cut-matches"
  | "smaller-misfit"
  | "same-order-as-given";

/** One pack in a comparison. */
export interface RankedChart {
  /** 1 is the best. */
  readonly rank: number;
  readonly recommendation: Recommendation;
  /** Why it stands before the next one; absent for the last. */
  readonly beforeNext?: Reason<ComparisonCode>;
}

/** Many packs held against one person, best first. */
export interface Comparison {
  readonly ranked: readonly RankedChart[];
}
