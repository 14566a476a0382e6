import type { ChartDimension, SizeChart } from "@tapewise/charts";
import { type Interval, type IntervalUnion, intersect } from "@tapewise/intervals";
import { type DimensionId, dimensionIds, dimensionName } from "@tapewise/landmarks";
import type { Box } from "@tapewise/population";

/** A size that people are held against. */
export interface PlannedSize {
  readonly chart: string;
  readonly size: string;
  /** Its range of the dimension that the chart goes by. */
  readonly main: Interval;
  readonly mainDimension: DimensionId;
  /** Whom the pack itself fits, without a hip belt of its own choice; `undefined` where that is nobody. */
  readonly box: Box | undefined;
}

/** What one chart offers to people of whom some dimensions are known. */
export interface Plan {
  readonly sizes: readonly PlannedSize[];
  /** Whom a size serves; a size with hip belts of its own choice has a box for each belt. */
  readonly offers: readonly { readonly size: number; readonly box: Box }[];
  /** What the sizes go by, the most telling first. */
  readonly judged: readonly DimensionId[];
  /** What the chart states and the population says nothing of. */
  readonly leftOut: readonly ChartDimension[];
  /** What the ranges of each dimension cover together. */
  readonly spans: readonly { readonly dimension: DimensionId; readonly covered: IntervalUnion }[];
}

/** What the length of a harness goes by, the most telling first; the rest in the order of the list. */
export const dimensionOrder: readonly ChartDimension[] = [
  ...new Set<ChartDimension>([
    "torso-length",
    "back-waist-length",
    "stature",
    ...dimensionIds,
    "unstated-hip-girth",
  ]),
];

const AROUND_THE_BELT: readonly ChartDimension[] = [
  "hip-belt-girth",
  "unstated-hip-girth",
  "hip-girth",
  "waist-girth",
];

/** Whether it is the hip belt that has to fit there. */
export function isAroundTheBelt(dimension: ChartDimension): boolean {
  return AROUND_THE_BELT.includes(dimension);
}

/** Whether the belt is had in a size of its own, so that it does not bind the size of the pack. */
export function choosesBelt({ swappable, belts }: SizeChart): boolean {
  return swappable.includes("hip-belt") || belts.length > 0;
}

/** A box with one more bound; `undefined` where nobody is left within it. */
export function bounded(box: Box, dimension: DimensionId, within: Interval): Box | undefined {
  const known = box[dimension];
  const both = known === undefined ? within : intersect(known, within);
  return both === undefined ? undefined : { ...box, [dimension]: both };
}

/** A dimension of a chart as a sentence has it. */
export function spoken(dimension: ChartDimension): string {
  return dimension === "unstated-hip-girth" ? "hip girth, unstated which" : dimensionName(dimension);
}
