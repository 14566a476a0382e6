import type { LengthReading, LengthUnit } from "@tapewise/units";

/**
 * What a cell, or a JSON range, says of one dimension in one unit: an end, two ends or a nominal
 * length. At least one is there; a nominal length with ends is a length whose range is stated too.
 */
export interface Statement {
  readonly from?: LengthReading;
  readonly to?: LengthReading;
  readonly nominal?: LengthReading;
  /** As it was written, with its unit. */
  readonly stated: string;
}

/** The units that a header names: none, one, or two for cells that state both. */
export type StatedUnits = readonly LengthUnit[];
