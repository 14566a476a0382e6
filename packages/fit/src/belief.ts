import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate } from "@tapewise/measurement";
import type { UncertainLength } from "./uncertain-length.ts";

/** One dimension after readings and prior are put together. */
export interface Belief extends UncertainLength {
  readonly dimension: DimensionId;
  readonly from: "readings" | "prior" | "readings-and-prior";
  readonly estimate?: Estimate;
  /** What the prior alone says; absent where it says nothing of this dimension. */
  readonly priorMeanMm?: number;
  readonly priorSdMm?: number;
}

/** Everything believed of one person. */
export interface Beliefs {
  readonly list: readonly Belief[];
  readonly of: (dimension: DimensionId) => Belief | undefined;
  /** Correlation of two dimensions after the readings; 0 where they are independent. */
  readonly correlation: (first: DimensionId, second: DimensionId) => number;
}
