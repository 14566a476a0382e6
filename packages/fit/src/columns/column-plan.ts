import type { ChartDimension } from "@tapewise/charts";
import type { Interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { FitPolicy } from "../policy.ts";
import type { ReasonCode } from "../reasons.ts";

/** A chart made ready for columns of people of whom the same dimensions are known. */
export interface ColumnPlan {
  readonly chart: string;
  /** The sizes that can be judged, in the chart's order: what a pick counts from 0. */
  readonly sizes: readonly string[];
  /** Sizes that state nothing of the main dimension. */
  readonly unjudgedSizes: readonly string[];
  /** The dimensions that bind the size, the main one first: the columns of beliefs. */
  readonly dimensions: readonly ChartDimension[];
  /** What is to be known of the body for each of them. */
  readonly beliefs: readonly DimensionId[];
  readonly policy: FitPolicy;
  /** Reasons that follow from the chart and the pick alone, for each size, after those that depend on the person. */
  readonly standingReasons: readonly (readonly ReasonCode[])[];
  /** The tables that the columns are worked out with. */
  readonly tables: ColumnTables;
}

/** A plan in numbers. Matrices have a row for each size and a column for each dimension. */
export interface ColumnTables {
  /** Every different end in the chart, those of one dimension together; the first two are the open ones. */
  readonly ends: Float64Array;
  /** Where the ends of each dimension begin, and where the last one stops. */
  readonly starts: Int32Array;
  /** The position of the lower end of each range among the ends; -1 where nothing is stated. */
  readonly lower: Int32Array;
  readonly upper: Int32Array;
  readonly intervals: readonly (Interval | undefined)[];
  /** The ends of the whole chart in each dimension; -1 where a size states nothing. */
  readonly lowest: Int32Array;
  readonly highest: Int32Array;
  readonly hulls: readonly (Interval | undefined)[];
  /** Order of sizes that are equal in all else: the smaller number first. */
  readonly order: Int32Array;
  /** Order by the main dimension, the longest highest; the same for the same range. */
  readonly length: Int32Array;
  /** 1 for a harness that is fixed, 2 for one that can be adjusted, 0 where the chart does not say. */
  readonly harness: Uint8Array;
  /** `NaN` where it is not stated. */
  readonly capacity: Float64Array;
  /** The bits of the standing reasons. */
  readonly standing: Int32Array;
  /** Whether the main dimension is what the length of a harness goes by. */
  readonly setsLength: boolean;
  /** Whether no verdict holds until a length of the back is read. */
  readonly lacksLength: boolean;
  readonly normal: Float64Array;
  readonly student: Float64Array;
  /** Equally likely scores of what further readings may show. */
  readonly scores: Float64Array;
}
