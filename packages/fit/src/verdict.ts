import { hull, type Interval } from "@tapewise/intervals";
import type { JudgedDimension } from "./judged-dimensions.ts";
import { holdAgainst } from "./location-scale.ts";
import type { FitPolicy } from "./policy.ts";
import type { OutsideRange, SizeFit, Verdict } from "./recommendation.ts";

/** A verdict before further readings are thought of. */
export interface PlainVerdict {
  readonly verdict: Exclude<Verdict, "measure-again">;
  readonly outside?: OutsideRange;
}

/**
 * What the probabilities amount to. A size fits from the policy's `fitProbability` on. Where none
 * does, the person lies outside the chart if one end of it is passed with at least that probability,
 * and between sizes otherwise.
 */
export function judge(
  pick: SizeFit,
  fits: readonly SizeFit[],
  judged: readonly JudgedDimension[],
  policy: FitPolicy,
): PlainVerdict {
  if (pick.probability >= policy.fitProbability) {
    const fitting = fits.filter((fit) => fit.probability >= policy.fitProbability);
    return { verdict: fitting.length > 1 ? "two-sizes-fit" : "fits" };
  }
  const outside = judged
    .flatMap((dimension) => farthestEnd(dimension, fits))
    .filter((end) => end.probability >= policy.fitProbability)
    .toSorted((a, b) => b.probability - a.probability)[0];
  return outside === undefined ? { verdict: "between-sizes" } : { verdict: "outside-the-range", outside };
}

function farthestEnd(judged: JudgedDimension, fits: readonly SizeFit[]): readonly OutsideRange[] {
  const intervals = fits.map(
    (fit) => fit.dimensions.find((one) => one.dimension === judged.charted)?.range.interval,
  );
  // A size without a statement on this dimension takes everybody.
  if (intervals.some((interval) => interval === undefined)) return [];
  const [first, ...others] = intervals.filter((interval): interval is Interval => interval !== undefined);
  if (first === undefined) return [];
  const fit = holdAgainst(judged.belief, hull(first, ...others));
  const end = fit.below > fit.above ? "below" : "above";
  return [
    {
      dimension: judged.charted,
      end,
      byMm: fit.expectedMisfitMm,
      probability: end === "below" ? fit.below : fit.above,
    },
  ];
}
