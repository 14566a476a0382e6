import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { menReference, referencePrior, womenReference } from "@tapewise/population";
import { normalQuantile } from "@tapewise/statistics";
import { type Millimetres, millimetres } from "@tapewise/units";
import type { QuickEstimates } from "./quick-estimate.ts";
import type { ScannedPerson } from "./scanned-person.ts";

/** What is believed of every dimension, and the joint figures of those that the prior speaks of. */
export interface QuickBeliefs {
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  readonly degrees: Float64Array;
  /** A bit for each dimension whose estimate lies farther off than the prior lets pass. */
  unlikely: number;
}

/** Beliefs to be filled in. */
export function createQuickBeliefs(): QuickBeliefs {
  const column = () => new Float64Array(dimensionIds.length);
  return { mean: column(), sd: column(), degrees: column(), unlikely: 0 };
}

/** So many statures are kept ready; people state theirs in whole centimetres or inches. */
const MOST_KEPT = 2000;

/** The priors of people by cut and stature, as `choosePrior` gives them; `undefined` for statures that were not surveyed. */
export function createPriors(): (cut: number, statureMm: number) => Prior | undefined {
  const kept = [womenReference, menReference].map(() => new Map<number, Prior>());
  return (cut, statureMm) => {
    const { cut: name, surveyedStatureMm } = cut === 1 ? womenReference : menReference;
    if (!(statureMm >= surveyedStatureMm.from && statureMm <= surveyedStatureMm.to)) return undefined;
    const known = kept[cut - 1];
    const found = known?.get(statureMm);
    if (found !== undefined) return found;
    const stature: Millimetres = millimetres(statureMm);
    const prior = referencePrior({ cut: name, statureMm: stature });
    if (known !== undefined && known.size < MOST_KEPT) known.set(statureMm, prior);
    return prior;
  };
}

/** So near to the score at which an estimate is questioned the last digits would decide. */
const ROOM = 1e-9;

/**
 * Makes the update of a prior by estimates, as `formBeliefs` does it. Whether it is sure which estimates are to be
 * questioned.
 *
 * @param dimensions - those that the prior speaks of
 */
export function createQuickUpdate(
  dimensions: readonly DimensionId[],
  questionProbability: number,
): (person: ScannedPerson, prior: Prior, estimates: QuickEstimates, into: QuickBeliefs) => boolean {
  const places = dimensions.map((id) => dimensionIds.indexOf(id));
  // Readings update in the order of the list of dimensions.
  const order = places.map((_, i) => i).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
  const size = dimensions.length;
  // Two-sided, in standard deviations.
  const far = -normalQuantile(questionProbability / 2);
  const [passes, asks] = [(far * (1 - ROOM)) ** 2, (far * (1 + ROOM)) ** 2];
  const covariance = new Float64Array(size * size);
  const column = new Float64Array(size);
  return (person, prior, estimates, into) => {
    into.unlikely = 0;
    for (let i = 0; i < size; i += 1) {
      const place = places[i] as number;
      const mean = prior.meanMm[i] as number;
      into.mean[place] = mean;
      const row = prior.covarianceMm2[i] as readonly number[];
      for (let j = 0; j < size; j += 1) covariance[i * size + j] = row[j] as number;
      if ((person.read & (1 << place)) === 0) continue;
      const difference = Math.abs((estimates.mean[place] as number) - mean);
      const variance = (row[i] as number) + (estimates.uncertainty[place] as number) ** 2;
      if (difference * difference < passes * variance) continue;
      if (!(difference * difference > asks * variance)) return false;
      into.unlikely |= 1 << place;
    }
    for (let k = 0; k < size; k += 1) {
      const i = order[k] as number;
      const place = places[i] as number;
      if ((person.read & (1 << place)) !== 0) {
        learn(i, place, estimates, places, covariance, column, into);
      }
    }
    for (let i = 0; i < size; i += 1) {
      const place = places[i] as number;
      const variance = covariance[i * size + i] as number;
      let inverse = 0;
      for (let k = 0; k < size; k += 1) {
        const j = order[k] as number;
        const other = places[j] as number;
        if ((person.read & (1 << other)) === 0) continue;
        const shared = covariance[Math.min(i, j) * size + Math.max(i, j)] as number;
        const own = (estimates.uncertainty[other] as number) ** 2;
        inverse += (shared ** 2 / (own * variance)) ** 2 / (estimates.degrees[other] as number);
      }
      into.sd[place] = Math.sqrt(variance);
      into.degrees[place] = inverse === 0 ? Number.POSITIVE_INFINITY : 1 / inverse;
    }
    return true;
  };
}

function learn(
  read: number,
  place: number,
  estimates: QuickEstimates,
  places: readonly number[],
  covariance: Float64Array,
  column: Float64Array,
  into: QuickBeliefs,
): void {
  const size = places.length;
  const known = (estimates.uncertainty[place] as number) ** 2;
  for (let i = 0; i < size; i += 1) column[i] = covariance[i * size + read] as number;
  const total = (column[read] as number) + known;
  const surprise = (estimates.mean[place] as number) - (into.mean[place] as number);
  for (let i = 0; i < size; i += 1) {
    const at = places[i] as number;
    into.mean[at] = (into.mean[at] as number) + ((column[i] as number) / total) * surprise;
    for (let j = 0; j < size; j += 1) {
      const value = covariance[i * size + j] as number;
      covariance[i * size + j] =
        i === read
          ? (column[j] as number) * (known / total)
          : j === read
            ? (column[i] as number) * (known / total)
            : value - (column[i] as number) * ((column[j] as number) / total);
    }
  }
}
