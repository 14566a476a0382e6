import { type ChartDimension, chartDimensions } from "@tapewise/charts";
import { everything, type Interval } from "@tapewise/intervals";
import { compareFit } from "./compare-fit.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import type { SizeFit } from "./recommendation.ts";
import { roomIn } from "./room-in.ts";

/**
 * Sizes from the best to the worst: the likelier fit, then the smaller expected misfit, then more room
 * to the nearer end in the main dimension. What is equal in all of these stands in order of the ranges, the
 * longer size first (assumption), and only where the ranges are the same in order of the names: neither the
 * order of the chart nor what a maker calls a size may play a part.
 */
export function rankSizes(
  fits: readonly SizeFit[],
  main: JudgedDimension,
  policy: FitPolicy,
): readonly SizeFit[] {
  return fits.toSorted(
    (a, b) =>
      compareFit(a, b, policy) ||
      compareRooms(roomIn(b, main), roomIn(a, main)) ||
      compareRanges(b, a) ||
      (a.size === b.size ? 0 : a.size < b.size ? -1 : 1),
  );
}

/** Above 0 where `a` reaches further up, or begins further up, in the first dimension in which they differ. */
function compareRanges(a: SizeFit, b: SizeFit): number {
  for (const dimension of chartDimensions) {
    const [one, other] = [rangeIn(a, dimension), rangeIn(b, dimension)];
    if (one.to !== other.to) return one.to < other.to ? -1 : 1;
    if (one.from !== other.from) return one.from < other.from ? -1 : 1;
  }
  return 0;
}

/** A size that says nothing of a dimension sets no bound there. */
function rangeIn(fit: SizeFit, dimension: ChartDimension): Interval {
  return fit.dimensions.find((one) => one.dimension === dimension)?.range.interval ?? everything;
}

/** Both may be infinite; a millionth of a millimetre is rounding and no room. */
function compareRooms(a: number, b: number): number {
  const [stepsOfA, stepsOfB] = [Math.round(a * 1e6), Math.round(b * 1e6)];
  return stepsOfA === stepsOfB ? 0 : stepsOfA - stepsOfB;
}
