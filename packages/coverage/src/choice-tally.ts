import { contains } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { Distribution, JointModel } from "@tapewise/population";
import { createRandom, normalIntervalProbability } from "@tapewise/statistics";
import { estimatedPick, type Measured, type Pickable } from "./estimated-pick.ts";
import { pickStretches } from "./pick-stretches.ts";

/** How true lengths and given sizes go together: shares of people. */
export interface Tally {
  /** For each size: who is given it. */
  readonly given: readonly number[];
  /** For each size: who is given it and does not fit it. */
  readonly misfitted: readonly number[];
  /** Who is given a size that does not fit although another would. */
  readonly wrong: number;
  /** Whom no size fits. */
  readonly unserved: number;
}

/** How finely lengths are summed, in parts of the uncertainty: the error of the sum goes with its square, under 10⁻⁵. */
const FINENESS = 50;

/** One dimension: true lengths are summed over, and the estimate's normal error is taken in closed form. */
export function tallyAlong(
  distribution: Distribution,
  dimension: DimensionId,
  uncertaintyMm: number,
  sizes: readonly Pickable[],
): Tally {
  const ranges = sizes.map(({ box, main }) => box[dimension] ?? main);
  const ends = ranges.flatMap(({ from, to }) => [from, to]).filter(Number.isFinite);
  const lowest = Math.min(distribution.quantile(1e-9), ...ends) - 8 * uncertaintyMm;
  const highest = Math.max(distribution.quantile(1 - 1e-9), ...ends) + 8 * uncertaintyMm;
  const pickAt = (meanMm: number): number => estimatedPick([{ dimension, meanMm, uncertaintyMm }], sizes);
  const stretches = pickStretches(pickAt, lowest, highest, uncertaintyMm / 8);
  const given = sizes.map(() => 0);
  const misfitted = sizes.map(() => 0);
  let [wrong, unserved] = [0, 0];
  const cuts = [...new Set([lowest, ...ends, highest])].sort((a, b) => a - b);
  for (const [index, to] of cuts.entries()) {
    const from = cuts[index - 1];
    if (from === undefined) continue;
    const fits = ranges.map((range) => contains(range, (from + to) / 2));
    const isServed = fits.includes(true);
    const panels = Math.max(1, Math.ceil(((to - from) * FINENESS) / uncertaintyMm));
    let before = index === 1 ? 0 : distribution.cumulative(from);
    for (let k = 1; k <= panels; k += 1) {
      const isLast = k === panels && index === cuts.length - 1;
      const after = isLast ? 1 : distribution.cumulative(from + ((to - from) * k) / panels);
      const share = after - before;
      before = after;
      if (share <= 0) continue;
      if (!isServed) unserved += share;
      const truth = from + ((to - from) * (k - 0.5)) / panels;
      for (const { from: low, to: high, pick } of stretches) {
        const chance =
          share * normalIntervalProbability((low - truth) / uncertaintyMm, (high - truth) / uncertaintyMm);
        given[pick] = (given[pick] ?? 0) + chance;
        if (fits[pick]) continue;
        misfitted[pick] = (misfitted[pick] ?? 0) + chance;
        if (isServed) wrong += chance;
      }
    }
  }
  return { given, misfitted, wrong, unserved };
}

/** Several dimensions: people and their errors are drawn at random. */
export function tallyDrawn(
  population: JointModel,
  uncertainties: readonly { readonly dimension: DimensionId; readonly uncertaintyMm: number }[],
  sizes: readonly Pickable[],
  { people, seed }: { readonly people: number; readonly seed: number },
): Tally {
  const random = createRandom(seed);
  const places = uncertainties.map(({ dimension }) => population.variables.indexOf(dimension));
  const given = sizes.map(() => 0);
  const misfitted = sizes.map(() => 0);
  let [wrong, unserved] = [0, 0];
  for (let k = 0; k < people; k += 1) {
    const person = population.sample(random);
    const truth = places.map((place) => person[place] ?? 0);
    const measured = uncertainties.map(
      (one, n): Measured => ({ ...one, meanMm: (truth[n] ?? 0) + one.uncertaintyMm * random.normal() }),
    );
    const pick = estimatedPick(measured, sizes);
    const fits = sizes.map(({ box }) =>
      uncertainties.every(({ dimension }, n) => {
        const range = box[dimension];
        return range === undefined || contains(range, truth[n] ?? 0);
      }),
    );
    given[pick] = (given[pick] ?? 0) + 1;
    if (!fits[pick]) misfitted[pick] = (misfitted[pick] ?? 0) + 1;
    if (!fits.includes(true)) unserved += 1;
    else if (!fits[pick]) wrong += 1;
  }
  const share = (count: number): number => count / people;
  return {
    given: given.map(share),
    misfitted: misfitted.map(share),
    wrong: share(wrong),
    unserved: share(unserved),
  };
}
