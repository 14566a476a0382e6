import type { ChartDimension } from "@tapewise/charts";
import { normalQuantile } from "@tapewise/statistics";
import { holdAgainst } from "./location-scale.ts";
import type { SizeFit } from "./recommendation.ts";

/** What further readings of one dimension would bring, before they are taken. */
export interface Prospect {
  /** Chance that the pick changes. */
  readonly changeProbability: number;
  /** Expected rise of the probability that the picked size fits. */
  readonly gainProbability: number;
}

/** Points of the predictive distribution: equally likely, so that a jump of the pick is not missed. */
const POINTS = 48;
let scores: readonly number[] | undefined;

/**
 * Preposterior analysis (Raiffa & Schlaifer 1961): the dimension is now known as N(m, s²); after the
 * further readings it will be known as N(m′, s′²), where m′ itself is N(m, s² − s′²) today. For each
 * likely m′ the sizes are ranked anew; the other dimensions keep their probabilities.
 */
export function lookAhead(
  fits: readonly SizeFit[],
  pick: SizeFit,
  dimension: ChartDimension,
  now: { readonly meanMm: number; readonly sdMm: number },
  afterSdMm: number,
): Prospect {
  const spread = Math.sqrt(Math.max(0, now.sdMm ** 2 - afterSdMm ** 2));
  if (spread === 0 || fits.length < 2) return { changeProbability: 0, gainProbability: 0 };
  const sides = fits.map((fit) => {
    const own = fit.dimensions.find((one) => one.dimension === dimension);
    const others = fit.dimensions.reduce((p, one) => (one === own ? p : p * one.probability), 1);
    return { isPick: fit === pick, interval: own?.range.interval, others };
  });
  let changes = 0;
  let gain = 0;
  scores ??= Array.from({ length: POINTS }, (_, i) => normalQuantile((i + 0.5) / POINTS));
  for (const score of scores) {
    const length = {
      meanMm: now.meanMm + score * spread,
      sdMm: afterSdMm,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    };
    let bestOfAll = 0;
    let ofPick = 0;
    for (const side of sides) {
      const inside = side.interval === undefined ? 1 : holdAgainst(length, side.interval).inside;
      const probability = side.others * inside;
      if (side.isPick) ofPick = probability;
      if (probability > bestOfAll) bestOfAll = probability;
    }
    if (bestOfAll > ofPick) {
      changes += 1;
      gain += bestOfAll - ofPick;
    }
  }
  return { changeProbability: changes / POINTS, gainProbability: gain / POINTS };
}
