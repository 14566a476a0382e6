import type { DimensionId, SourceId } from "@tapewise/landmarks";

/** The most that two readings of a dimension may differ by before they are taken again, in a published survey. */
export interface ObserverAllowance {
  readonly dimension: DimensionId;
  readonly mm: number;
  /** The name of the dimension in the source. */
  readonly name: string;
  readonly source: SourceId;
}
