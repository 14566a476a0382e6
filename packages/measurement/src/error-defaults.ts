import type { DimensionKind, MeasuredBy, Tool } from "@tapewise/landmarks";
import type { MethodBasis } from "./estimate.ts";

/** What is taken for granted about how somebody reads one kind of dimension. Standard deviations in mm. */
export interface HandError {
  /** Scatter of one reading about the next while the landmarks stay marked. */
  readonly handlingMm: number;
  /** Scatter from finding the landmarks once more. */
  readonly findingMm: number;
  /** What stays the same however often this person reads: a habit of finding or holding. */
  readonly lastingMm: number;
}

/** What is taken for granted about a tool. */
export interface ToolError {
  /** Half-width of the scale error as a part of the length (stretch, print), rectangular. */
  readonly scaleHalfWidth: number;
  /** Standard deviation in mm of carrying a length over to a ruler: one reading has two transfers. */
  readonly transferMm: number;
  /** Standard deviation in mm of one joint where a rule is laid end to end. */
  readonly jointMm: number;
}

/** Every figure that an estimate leans on when no error is stated. Replace it whole or in part. */
export interface ErrorDefaults {
  readonly hands: Readonly<Record<DimensionKind, Readonly<Record<MeasuredBy, HandError>>>>;
  readonly tools: Readonly<Record<Tool, ToolError>>;
  /** Degrees of freedom that each figure above is worth: ν = ½ (relative doubt)⁻² (GUM G.4.2). */
  readonly degreesOfFreedom: number;
  /** Length of a short rule in mm where none is stated. */
  readonly ruleLengthMm: number;
  readonly basis: MethodBasis;
}
