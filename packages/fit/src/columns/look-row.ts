import { CLOSE } from "./close-call.ts";
import type { ColumnRow } from "./column-row.ts";
import { ABOVE, AROUND, BELOW, layOutSizes, mostElsewhere } from "./lay-out-sizes.ts";
import { FARTHEST, normalBelow } from "./normal-table.ts";

/**
 * Whether a look at the body is worth taking before this pick is final: the preposterior analysis of `recommend`
 * for every look that the row holds. As soon as one is, the others need not be weighed.
 */
export function isLookWorthwhile(row: ColumnRow): boolean {
  const { plan, probabilities, pick, sds, looks } = row;
  const { sureProbability, mostFurtherReadings, worthwhileGain } = plan.policy;
  const own = probabilities[pick] as number;
  if (Math.abs(own - sureProbability) < CLOSE) row.isClose = true;
  if (own >= sureProbability || mostFurtherReadings < 1 || probabilities.length < 2) return false;
  const count = looks.length / plan.dimensions.length;
  for (let dimension = 0; dimension < plan.dimensions.length; dimension += 1) {
    const now = sds[dimension] as number;
    const isOrdered = layOutSizes(row, dimension);
    if (mostElsewhere(row) < worthwhileGain - CLOSE) continue;
    for (let look = count - 1; look >= 0; look -= 1) {
      const after = looks[dimension * count + look] as number;
      if (after < now && isWorthwhile(row, dimension, after, isOrdered)) return true;
    }
  }
  return false;
}

function isWorthwhile(row: ColumnRow, dimension: number, after: number, isOrdered: boolean): boolean {
  const { changeProbability, worthwhileGain } = row.plan.policy;
  const now = row.sds[dimension] as number;
  const spread = Math.sqrt(Math.max(0, now ** 2 - after ** 2));
  if (spread === 0) return false;
  const count = row.plan.tables.scores.length;
  if (isOrdered && changesTooSeldom(row, dimension, spread, after)) return false;
  clear();
  if (!(isOrdered && goesInFromBothEnds(row, dimension, spread, after))) {
    clear();
    for (let point = 0; point < count; point += 1) stands(row, dimension, point, spread, after, AROUND);
  }
  const gain = found.gain / count;
  if (Math.abs(gain - worthwhileGain) < 100 * CLOSE) row.isClose = true;
  if (gain < worthwhileGain) return false;
  if (found.changes / count >= changeProbability) return true;
  if ((found.changes + found.open) / count >= changeProbability) row.isClose = true;
  return false;
}

/** What was met on the way last: points at which the pick changes, what that gains, and points too far out to tell. */
const found = { changes: 0, gain: 0, open: 0 };

function clear(): void {
  found.changes = 0;
  found.gain = 0;
  found.open = 0;
}

/**
 * Whether the pick surely changes at fewer points than make a look worthwhile: where it stands at the point that
 * halves of them would leave at either end, it stands all the way in.
 */
function changesTooSeldom(row: ColumnRow, dimension: number, spread: number, after: number): boolean {
  const count = row.plan.tables.scores.length;
  const { changeProbability } = row.plan.policy;
  let needed = Math.ceil(changeProbability * count);
  // As it is compared: by shares, not by numbers.
  while (needed > 0 && (needed - 1) / count >= changeProbability) needed -= 1;
  const ofAbove = needed >> 1;
  const ofBelow = needed - 1 - ofAbove;
  if (ofBelow < 0) return false;
  return (
    stands(row, dimension, count - 1 - ofAbove, spread, after, ABOVE) &&
    stands(row, dimension, ofBelow, spread, after, BELOW)
  );
}

/**
 * Goes in from either end until the pick stands. Whether that is all; where both ways meet, sizes of both sides vie
 * for the same points.
 */
function goesInFromBothEnds(row: ColumnRow, dimension: number, spread: number, after: number): boolean {
  const last = row.plan.tables.scores.length - 1;
  let above = last;
  while (above >= 0 && !stands(row, dimension, above, spread, after, ABOVE)) above -= 1;
  let below = 0;
  while (below <= last && !stands(row, dimension, below, spread, after, BELOW)) below += 1;
  return below <= above;
}

/** Whether the pick surely stands, beside sizes of one side, where the readings show this score. */
function stands(
  row: ColumnRow,
  dimension: number,
  point: number,
  spread: number,
  after: number,
  side: number,
): boolean {
  const { plan, pick, means } = row;
  const { normal, scores } = plan.tables;
  const mean = (means[dimension] as number) + (scores[point] as number) * spread;
  const hold = row.scratch.isHeld ? plan.policy.tieLoss : 0;
  const { sides, others, lowers, uppers } = row.scratch;
  const ofPick = chanceAfter(
    normal,
    others[pick] as number,
    (lowers[pick] as number) - mean,
    (uppers[pick] as number) - mean,
    after,
  );
  let best = 0;
  for (let size = 0; size < others.length; size += 1) {
    // No size is likelier than all its other dimensions allow.
    if (size === pick || (others[size] as number) <= best || (side !== AROUND && sides[size] !== side))
      continue;
    const chance = chanceAfter(
      normal,
      others[size] as number,
      (lowers[size] as number) - mean,
      (uppers[size] as number) - mean,
      after,
    );
    if (chance > best) best = chance;
  }
  if (Math.abs(best - ofPick - hold) < CLOSE) {
    // Which of two chances that are all but the same is the larger cannot be told, and gains nothing.
    if (hold === 0) {
      found.open += 1;
      return false;
    }
    row.isClose = true;
  }
  if (!(best > ofPick + hold)) return true;
  found.changes += 1;
  found.gain += best - ofPick;
  return false;
}

/** The probability of a size once its dimension is known as N(mean, after²), from the ends less the mean. */
function chanceAfter(
  normal: Float64Array,
  others: number,
  lower: number,
  upper: number,
  after: number,
): number {
  const far = FARTHEST * after;
  if (lower > far || upper < -far) return 0;
  if (after === 0 || others === 0) return others;
  const below = lower < -far ? 0 : normalBelow(normal, lower / after);
  const inside = upper > far ? 1 - below : normalBelow(normal, upper / after) - below;
  return others * inside;
}
