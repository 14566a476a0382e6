import type { ChartDimension, SizeChart } from "@tapewise/charts";
import { contains, type Interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";

/** A dimension that sizes are held against, and how well people know it of themselves. */
export interface JudgedLength {
  readonly dimension: DimensionId;
  readonly uncertaintyMm: number;
}

/**
 * The printed ranges of each size in the judged dimensions, in their order; nothing for a size that does not state the
 * first of them, for it is not judged and fits nobody.
 */
export type Boxes = readonly (readonly (Interval | undefined)[] | undefined)[];

/** A chart that says "hip" and not which is judged by one of these. */
const HIPS: readonly DimensionId[] = ["hip-belt-girth", "hip-girth"];

/** The printed ranges of a chart. */
export function boxesOf(chart: SizeChart, judged: readonly JudgedLength[]): Boxes {
  const charted = judged.map(({ dimension }) => chartedAs(chart, dimension));
  const [main] = charted;
  return chart.sizes.map(({ ranges }) =>
    main === undefined || ranges[main] === undefined
      ? undefined
      : charted.map((dimension) => ranges[dimension]?.interval),
  );
}

/** Which sizes truly fit a body whose lengths are given as the printed chart would have them. */
export function fitsOf(boxes: Boxes, lengthsMm: readonly number[]): readonly boolean[] {
  return boxes.map(
    (box) =>
      box?.every((range, place) => range === undefined || contains(range, lengthsMm[place] ?? 0)) === true,
  );
}

/** What the chart calls a dimension that it is judged by. */
export function chartedAs({ sizes }: SizeChart, dimension: DimensionId): ChartDimension {
  const isStated = sizes.some(({ ranges }) => ranges[dimension] !== undefined);
  return !isStated && HIPS.includes(dimension) ? "unstated-hip-girth" : dimension;
}
