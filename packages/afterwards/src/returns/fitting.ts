import type { SizeChart, SizeRanges } from "@tapewise/charts";
import { contains, type Interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";

/** A dimension that sizes are held against, and how well people know it of themselves. */
export interface JudgedLength {
  readonly dimension: DimensionId;
  readonly uncertaintyMm: number;
}

/** The printed ranges of each size in the judged dimensions, in their order. */
export type Boxes = readonly (readonly (Interval | undefined)[])[];

/** A chart that says "hip" and not which is judged by one of these. */
const HIPS: readonly DimensionId[] = ["hip-belt-girth", "hip-girth"];

/** The printed ranges of a chart. */
export function boxesOf(chart: SizeChart, judged: readonly JudgedLength[]): Boxes {
  return chart.sizes.map(({ ranges }) => judged.map(({ dimension }) => rangeOf(ranges, dimension)));
}

/** Which sizes truly fit a body whose lengths are given as the printed chart would have them. */
export function fitsOf(boxes: Boxes, lengthsMm: readonly number[]): readonly boolean[] {
  return boxes.map((box) =>
    box.every((range, place) => range === undefined || contains(range, lengthsMm[place] ?? 0)),
  );
}

function rangeOf(ranges: SizeRanges, dimension: DimensionId): Interval | undefined {
  const range = ranges[dimension] ?? (HIPS.includes(dimension) ? ranges["unstated-hip-girth"] : undefined);
  return range?.interval;
}
