import type { Interval } from "@tapewise/intervals";
import type { ChartDimension } from "./size-chart.ts";

/** The sizes of the pack, or the hip belts that are sized separately. */
export type ChartTable = "sizes" | "belts";

/** Whose range a finding is about. */
interface OfRange {
  readonly table: ChartTable;
  readonly dimension: ChartDimension;
  readonly size: string;
}

/** Two neighbouring sizes, the smaller first, and the lengths that neither or both of them cover. */
export interface NeighbourFinding extends OfRange {
  /** `gap-of-writing` is a gap no wider than one step of the figures, such as 42 cm to 43 cm; `overlap-wide` is wider than common practice. */
  readonly kind: "gap" | "gap-of-writing" | "overlap" | "overlap-wide";
  readonly other: string;
  readonly fromMm: number;
  readonly toMm: number;
  readonly widthMm: number;
}

/** Two sizes that stand to each other as they should not. */
export interface RelationFinding extends OfRange {
  /** `size` lies inside `other`; states the same range; or is the larger one though its name says smaller. */
  readonly kind: "size-inside" | "ranges-equal" | "sizes-out-of-order";
  readonly other: string;
}

/** A size without a bound on one side, although `other` reaches further on that side. */
export interface OpenEndFinding extends OfRange {
  readonly kind: "end-open-inside";
  readonly end: "lower" | "upper";
  readonly other: string;
}

/** What may have happened to a figure that no person's dimension could have. */
export type Slip =
  | "inches-as-centimetres"
  | "centimetres-as-inches"
  | "ten-times-too-small"
  | "ten-times-too-large";

/** Stated lengths, in millimetres, that lie outside what people measure. */
export interface ImplausibleFinding extends OfRange {
  readonly kind: "length-implausible";
  readonly stated: Interval;
  readonly limits: Interval;
}

/** The same, where one slip would explain it: `wouldBe` is what was meant then. */
export interface SuspiciousFinding extends OfRange {
  readonly kind: "length-suspicious";
  readonly stated: Interval;
  readonly limits: Interval;
  readonly slip: Slip;
  readonly wouldBe: Interval;
}

/** A range that is narrower or wider than sizes are, with the limit that it passes. */
export interface WidthFinding extends OfRange {
  readonly kind: "range-narrow" | "range-wide";
  readonly widthMm: number;
  readonly limitMm: number;
}

/** A range that was inferred from one nominal length. */
export interface InferredFinding extends OfRange {
  readonly kind: "interval-inferred";
  readonly nominalMm: number;
  readonly interval: Interval;
}

/** A table that says "hip" and not which girth. */
export interface UnstatedGirthFinding {
  readonly kind: "girth-unstated";
  readonly table: ChartTable;
  readonly dimension: "unstated-hip-girth";
}

/** A size without any body dimension. */
export interface UnmeasuredFinding {
  readonly kind: "size-without-dimension";
  readonly table: ChartTable;
  readonly size: string;
}

/** `other` is the larger size in the dimension, and holds less. */
export interface CapacityFinding extends OfRange {
  readonly kind: "capacity-falls";
  readonly other: string;
  readonly sizeLitres: number;
  readonly otherLitres: number;
}

/** One thing about a chart that its maker should look at, or its user should know. Lengths in millimetres. */
export type AuditFinding =
  | NeighbourFinding
  | RelationFinding
  | OpenEndFinding
  | ImplausibleFinding
  | SuspiciousFinding
  | WidthFinding
  | InferredFinding
  | UnstatedGirthFinding
  | UnmeasuredFinding
  | CapacityFinding;
