import type { SizeRanges } from "@tapewise/charts";
import type { UncertainLength } from "@tapewise/fit";
import { distanceTo, type Interval } from "@tapewise/intervals";
import { normalCdf } from "@tapewise/statistics";
import type { Side } from "../evidence/seen-outcome.ts";
import type { SeenSize } from "./body-check-state.ts";
import { SLIP, UNNOTICED_MM } from "./data.ts";

/** What was seen of one part: on which side of its range the body looks, by an eye that errs so far. */
export interface Sight {
  readonly side: Side;
  readonly doubtMm: number;
}

/** A size with the range that is judged. */
export interface RangedSize {
  readonly name: string;
  readonly interval: Interval;
}

/** The sizes, or belts, that state a dimension. */
export function rangedSizes(
  sizes: readonly { readonly name: string; readonly ranges: SizeRanges }[],
  dimension: keyof SizeRanges,
): readonly RangedSize[] {
  return sizes.flatMap(({ name, ranges }) => {
    const interval = ranges[dimension]?.interval;
    return interval === undefined ? [] : [{ name, interval }];
  });
}

const POINTS = 81;
const REACH = 5;

/**
 * How likely each size fits, after what was seen on the one that is worn: the belief, at points five standard
 * deviations to either side, times the probability of every answer (Bayes' theorem).
 *
 * With x the signed distance of the body to the range in mm, an answer is `above` with Φ((x − t)/s), `below` with
 * Φ((−x − t)/s) and `inside` with the rest: an ordered probit with the unnoticed misfit t and the doubt s of the eye.
 * With a small chance it says nothing. Student's t counts as normal.
 */
export function weighSizes(
  { meanMm, sdMm }: UncertainLength,
  worn: Interval,
  sizes: readonly RangedSize[],
  sights: readonly Sight[],
): readonly SeenSize[] {
  const spread = Math.max(sdMm, LEAST_SD);
  const likelihood = (misfitMm: number): number =>
    sights.reduce((product, sight) => product * chanceOf(sight, misfitMm), 1);
  const whereItFits = likelihood(0);
  const lengths: number[] = [];
  const weights: number[] = [];
  let total = 0;
  for (let i = 0; i < POINTS; i += 1) {
    const z = REACH * ((2 * i) / (POINTS - 1) - 1);
    const lengthMm = meanMm + spread * z;
    const distanceMm = distanceTo(worn, lengthMm);
    const misfitMm = lengthMm < worn.from ? -distanceMm : distanceMm;
    const weight = Math.exp(-0.5 * z * z) * (misfitMm === 0 ? whereItFits : likelihood(misfitMm));
    lengths.push(lengthMm);
    weights.push(weight);
    total += weight;
  }
  const step = (2 * REACH * spread) / (POINTS - 1);
  return sizes.map(({ name, interval }) => {
    let inside = 0;
    for (let i = 0; i < POINTS; i += 1) {
      // A point stands for the step around it, of which an end of the range may cut off a part.
      const from = Math.max(interval.from, (lengths[i] as number) - step / 2);
      const to = Math.min(interval.to, (lengths[i] as number) + step / 2);
      if (to > from) inside += (weights[i] as number) * ((to - from) / step);
    }
    return { size: name, probability: Math.min(1, inside / total) };
  });
}

/** A length that is known exactly would leave nothing to be learned from the pack itself. */
const LEAST_SD = 1;

/** Probability of an answer, at a signed misfit in mm (above 0 where the body is too long for the part). */
function chanceOf({ side, doubtMm }: Sight, misfitMm: number): number {
  const honest = honestChance(side, misfitMm, doubtMm);
  return (1 - SLIP) * Math.max(0, honest) + SLIP / 3;
}

function honestChance(side: Side, misfitMm: number, doubtMm: number): number {
  const above = (): number => normalCdf((misfitMm - UNNOTICED_MM) / doubtMm);
  const below = (): number => normalCdf((-misfitMm - UNNOTICED_MM) / doubtMm);
  if (side === "inside") return 1 - above() - below();
  return side === "above" ? above() : below();
}
