import type { ColumnRow } from "./column-row.ts";
import { normalBelow } from "./normal-table.ts";

/** Chances and gains that differ by less may turn where they are worked out another way. */
const CLOSE = 1e-11;

/**
 * Whether a look at the body is worth taking before this pick is final: the preposterior analysis of `recommend`
 * for every look that the row holds. As soon as one is, the others need not be weighed.
 */
export function isLookWorthwhile(row: ColumnRow): boolean {
  const { plan, probabilities, pick, sds, looks } = row;
  const { sureProbability, mostFurtherReadings } = plan.policy;
  const own = probabilities[pick] as number;
  if (Math.abs(own - sureProbability) < CLOSE) row.isClose = true;
  if (own >= sureProbability || mostFurtherReadings < 1 || probabilities.length < 2) return false;
  const count = looks.length / plan.dimensions.length;
  for (let dimension = 0; dimension < plan.dimensions.length; dimension += 1) {
    const now = sds[dimension] as number;
    for (let look = count - 1; look >= 0; look -= 1) {
      const after = looks[dimension * count + look] as number;
      if (after < now && isWorthwhile(row, dimension, after)) return true;
    }
  }
  return false;
}

function isWorthwhile(row: ColumnRow, dimension: number, after: number): boolean {
  const { plan, pick, sds, means } = row;
  const { changeProbability, worthwhileGain, tieLoss } = plan.policy;
  const { scores } = plan.tables;
  const now = sds[dimension] as number;
  const spread = Math.sqrt(Math.max(0, now ** 2 - after ** 2));
  if (spread === 0) return false;
  const hold = row.scratch.isHeld ? tieLoss : 0;
  let changes = 0;
  let gain = 0;
  for (let k = 0; k < scores.length; k += 1) {
    const mean = (means[dimension] as number) + (scores[k] as number) * spread;
    const ofPick = chanceAfter(row, pick, dimension, mean, after);
    let bestOfAll = ofPick;
    for (let size = 0; size < row.probabilities.length; size += 1) {
      if (size === pick) continue;
      const chance = chanceAfter(row, size, dimension, mean, after);
      if (chance > bestOfAll) bestOfAll = chance;
    }
    if (bestOfAll !== ofPick && Math.abs(bestOfAll - ofPick - hold) < CLOSE) row.isClose = true;
    if (bestOfAll > ofPick + hold) {
      changes += 1;
      gain += bestOfAll - ofPick;
    }
  }
  const chance = changes / scores.length;
  const meanGain = gain / scores.length;
  if (Math.abs(meanGain - worthwhileGain) < CLOSE) row.isClose = true;
  return chance >= changeProbability && meanGain >= worthwhileGain;
}

/** The probability of a size once its dimension is known as N(mean, after²); what is known of the others stays. */
function chanceAfter(row: ColumnRow, size: number, dimension: number, mean: number, after: number): number {
  const { tables, dimensions } = row.plan;
  const at = size * dimensions.length + dimension;
  const own = row.scratch.inside[at] as number;
  const fit = row.probabilities[size] as number;
  const others = own > 0 ? Math.min(1, fit / own) : 0;
  const from = tables.lower[at] as number;
  if (from < 0 || others === 0) return others;
  const [lower, upper] = [tables.ends[from] as number, tables.ends[tables.upper[at] as number] as number];
  if (after === 0) return lower <= mean && mean <= upper ? others : 0;
  const inverse = 1 / after;
  const [a, b] = [(lower - mean) * inverse, (upper - mean) * inverse];
  if (a >= FAR || b <= -FAR) return 0;
  return others * (normalBelow(tables.normal, b) - normalBelow(tables.normal, a));
}

/** Beyond so many standard deviations nothing is left. */
const FAR = 9;
