import { hull } from "@tapewise/intervals";
import { holdAgainst } from "./hold-against.ts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import type { OutsideRange, SizeFit, Verdict } from "./recommendation.ts";

/** A verdict before further readings are thought of. */
export interface PlainVerdict {
  readonly verdict: Exclude<Verdict, "measure-again">;
  readonly outside?: OutsideRange;
}

/**
 * What the probabilities amount to. A size fits from the policy's `fitProbability` on, and two do when
 * their probabilities add up to more than 1, for then some bodies must fit both. Where they do not, and the
 * other is within `tieLoss` of the pick, the person is between the two. Where no size fits, the person lies
 * outside the chart if one end of it is passed with at least `fitProbability` in any dimension, and
 * between sizes otherwise.
 */
export function judge(
  pick: SizeFit,
  fits: readonly SizeFit[],
  judged: readonly JudgedDimension[],
  policy: FitPolicy,
): PlainVerdict {
  if (pick.probability >= policy.fitProbability) {
    const others = fits.filter((fit) => fit !== pick);
    const goesWithPick = (fit: SizeFit) => fit.probability + pick.probability > 1 + ROUNDING;
    if (others.some((fit) => fit.probability >= policy.fitProbability && goesWithPick(fit))) {
      return { verdict: "two-sizes-fit" };
    }
    const floor = pick.probability - policy.tieLoss;
    const isTossUp = others.some((fit) => fit.probability >= floor && !goesWithPick(fit));
    return { verdict: isTossUp ? "between-sizes" : "fits" };
  }
  const [outside] = judged
    .flatMap((dimension) => likelierEnd(dimension, fits))
    .filter((end) => end.probability >= policy.fitProbability)
    .toSorted((a, b) => b.probability - a.probability);
  return outside === undefined ? { verdict: "between-sizes" } : { verdict: "outside-the-range", outside };
}

/** Two sizes that share nothing must not seem to share a last digit. */
const ROUNDING = 1e-9;

/** The end of the chart that is passed with the larger probability; nothing where a size takes everybody. */
export function likelierEnd(
  { charted, belief }: JudgedDimension,
  fits: readonly SizeFit[],
): readonly OutsideRange[] {
  const stated = fits.flatMap(
    (fit) => fit.dimensions.find((one) => one.dimension === charted)?.range.interval ?? [],
  );
  const [first, ...others] = stated;
  if (first === undefined || stated.length < fits.length) return [];
  const { below, above, expectedMisfitMm: byMm } = holdAgainst(belief, hull(first, ...others));
  const end = below > above ? "below" : "above";
  return [{ dimension: charted, end, byMm, probability: Math.max(below, above) }];
}
