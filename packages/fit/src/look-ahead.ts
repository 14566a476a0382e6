import type { ChartDimension } from "@tapewise/charts";
import { normalQuantile } from "@tapewise/statistics";
import { probabilityInside } from "./probability-inside.ts";
import type { SizeFit } from "./recommendation.ts";
import type { UncertainLength } from "./uncertain-length.ts";

/** What further readings of one dimension would bring, before they are taken. */
export interface Prospect {
  /** Chance that the pick changes. */
  readonly changeProbability: number;
  /** Expected rise of the probability that the picked size fits. */
  readonly gainProbability: number;
}

/** A choice as it stands now. */
export interface Standing {
  readonly fits: readonly SizeFit[];
  readonly pick: SizeFit;
  /** By how much another size must be likelier to take the place of the pick; above 0 where a reason beside fit holds it. */
  readonly hold: number;
}

/** Points of the predictive distribution: equally likely, so that a jump of the pick is not missed. */
const POINTS = 48;
let scores: readonly number[] | undefined;

/** The scores of the points of the predictive distribution. */
export function lookAheadScores(): readonly number[] {
  scores ??= Array.from({ length: POINTS }, (_, i) => normalQuantile((i + 0.5) / POINTS));
  return scores;
}

/**
 * Preposterior analysis (Raiffa & Schlaifer 1961): the dimension is now known as N(m, s²); after the
 * further readings it will be known as N(m′, s′²), where m′ itself is N(m, s² − s′²) today. For each
 * likely m′ the sizes are compared anew; what is known of the other dimensions stays as it is.
 */
export function lookAhead(
  { fits, pick, hold }: Standing,
  dimension: ChartDimension,
  now: Pick<UncertainLength, "meanMm" | "sdMm">,
  afterSdMm: number,
): Prospect {
  const spread = Math.sqrt(Math.max(0, now.sdMm ** 2 - afterSdMm ** 2));
  if (spread === 0 || fits.length < 2) return { changeProbability: 0, gainProbability: 0 };
  const sides = fits.map((fit) => {
    const own = fit.dimensions.find((one) => one.dimension === dimension);
    return {
      isPick: fit === pick,
      interval: own?.range.interval,
      others: probabilityOfOthers(fit, dimension),
    };
  });
  let changes = 0;
  let gain = 0;
  for (const score of lookAheadScores()) {
    const length = {
      meanMm: now.meanMm + score * spread,
      sdMm: afterSdMm,
      degreesOfFreedom: Number.POSITIVE_INFINITY,
    };
    let bestOfAll = 0;
    let ofPick = 0;
    for (const side of sides) {
      const inside = side.interval === undefined ? 1 : probabilityInside(length, side.interval);
      const probability = side.others * inside;
      if (side.isPick) ofPick = probability;
      if (probability > bestOfAll) bestOfAll = probability;
    }
    if (bestOfAll > ofPick + hold) {
      changes += 1;
      gain += bestOfAll - ofPick;
    }
  }
  return { changeProbability: changes / POINTS, gainProbability: gain / POINTS };
}

/** Probability that the other dimensions fit, given that this one does; a size that cannot fit stays so. */
function probabilityOfOthers(fit: SizeFit, dimension: ChartDimension): number {
  const own = fit.dimensions.find((one) => one.dimension === dimension)?.probability ?? 1;
  return own > 0 ? Math.min(1, fit.probability / own) : 0;
}
