import type { Interval } from "@tapewise/intervals";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Millimetres } from "@tapewise/units";

/** Every {@link Cut}. */
export const cuts = ["women", "men", "unisex", "youth"] as const;

/** Whom a pack is cut for. A chart that does not say is left without a cut, never taken as unisex. */
export type Cut = (typeof cuts)[number];

/** Every {@link HarnessKind}. */
export const harnessKinds = ["adjustable", "fixed"] as const;

/** Whether the length of the back system can be set (`adjustable`) or comes with the size (`fixed`). */
export type HarnessKind = (typeof harnessKinds)[number];

/** Every {@link SwappablePart}. */
export const swappableParts = ["hip-belt", "harness"] as const;

/** A part of the pack that can be had in another size than the pack itself. */
export type SwappablePart = (typeof swappableParts)[number];

/** Every {@link ChartDimension}. */
export const chartDimensions: readonly ChartDimension[] = [...dimensionIds, "unstated-hip-girth"];

/**
 * What a column of a chart measures. `unstated-hip-girth` stands for a chart that says "hip" without
 * saying which: the girth around the iliac crests, where a hip belt sits, or the widest one.
 */
export type ChartDimension = DimensionId | "unstated-hip-girth";

/** What one size states about one dimension. */
export interface SizeRange {
  /** Body lengths in millimetres. Finite ends are closed: both ends of "38-43 cm" are in the size. */
  readonly interval: Interval;
  /** `range`: the chart states the interval. `nominal`: it states one length, and the interval is inferred. */
  readonly basis: "range" | "nominal";
  /** The stated length, where the basis is `nominal`. */
  readonly nominalMm?: Millimetres;
  /** The cells as they were written, with their unit; two when the chart states inches and centimetres. */
  readonly stated: readonly string[];
}

/** The ranges of one size. A dimension that the chart does not state is absent. */
export type SizeRanges = Readonly<Partial<Record<ChartDimension, SizeRange>>>;

/** One size of a pack. */
export interface Size {
  readonly name: string;
  /** The sizes it covers: `["S", "M"]` for the double size "S/M", else its own name alone. */
  readonly covers: readonly string[];
  readonly ranges: SizeRanges;
  readonly capacityLitres?: number;
  readonly massGrams?: number;
  /** Overrides the chart's, where one size differs from the others. */
  readonly harness?: HarnessKind;
}

/** One size of a hip belt that is sized separately from the pack. */
export interface BeltSize {
  readonly name: string;
  readonly ranges: SizeRanges;
}

/** The size chart of one pack: sizes and hip belts in the order of the chart. */
export interface SizeChart {
  /** The chart's own name: what a recommendation calls it. */
  readonly chart: string;
  readonly maker?: string;
  readonly product?: string;
  readonly cut?: Cut;
  /** Absent when the chart does not say. */
  readonly harness?: HarnessKind;
  /** What can be had in another size than the pack. */
  readonly swappable: readonly SwappablePart[];
  readonly sizes: readonly Size[];
  /** Hip belts sized separately; empty when the belt comes with the size. */
  readonly belts: readonly BeltSize[];
}
