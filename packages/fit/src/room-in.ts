import type { JudgedDimension } from "./judged-dimensions.ts";
import type { SizeFit } from "./recommendation.ts";

/**
 * Distance in mm from the expected length to the nearer end of a size; negative outside, `Infinity` where
 * the size has no end there.
 */
export function roomIn(fit: SizeFit, { charted, belief }: JudgedDimension): number {
  const interval = fit.dimensions.find((one) => one.dimension === charted)?.range.interval;
  if (interval === undefined) return Number.POSITIVE_INFINITY;
  return Math.min(belief.meanMm - interval.from, interval.to - belief.meanMm);
}
