import { contains } from "@tapewise/intervals";
import { CLOSE, reaches } from "./close-call.ts";
import type { ColumnRow } from "./column-row.ts";
import { isBefore, roomIn } from "./rank-row.ts";
import { BITS } from "./reason-bits.ts";

/** Two ways to the same figure may differ in their last digits. */
const ROUNDING = 1e-9;
/** A dimension lies near an end of a size, or beyond it, when it passes it with this probability. */
const NEAR_THE_END = 0.35;

/** What speaks for the best size as such. */
export function whyBest(row: ColumnRow): number {
  const { probabilities, plan, pick, scratch } = row;
  const own = probabilities[pick] as number;
  if (own < plan.policy.hopelessProbability) return BITS.nearest;
  if (scratch.other < 0) return BITS.most;
  const apart = Math.abs(own - (probabilities[scratch.other] as number));
  if (Math.abs(apart - ROUNDING) < CLOSE) row.isClose = true;
  return apart < ROUNDING ? BITS.equal : BITS.most;
}

/** Why the best stands before the one that the main dimension allows next. */
export function whyBefore(row: ColumnRow): number {
  const { plan, probabilities, scratch } = row;
  const { best, inside } = scratch;
  const dimensions = plan.dimensions.length;
  const limit = plan.policy.fitProbability;
  const own = inside[best * dimensions] as number;
  if (!reaches(row, own, limit)) return 0;
  let rival = -1;
  for (let size = 0; size < probabilities.length; size += 1) {
    const theirs = inside[size * dimensions] as number;
    if (size === best || !reaches(row, theirs, limit)) continue;
    const step = rival < 0 ? 1 : theirs - (inside[rival * dimensions] as number);
    if (rival >= 0 && Math.abs(step) < CLOSE && !sharesRange(row, size, rival, 0)) row.isClose = true;
    if (step > 0 || (step === 0 && isBefore(row, size, rival))) rival = size;
  }
  if (rival < 0) return 0;
  const needed = Math.max(0, own - (inside[rival * dimensions] as number));
  let lead = Number.NEGATIVE_INFINITY;
  for (let dimension = 1; dimension < dimensions; dimension += 1) {
    if ((plan.tables.lower[best * dimensions + dimension] as number) < 0) continue;
    const ahead =
      (inside[best * dimensions + dimension] as number) - (inside[rival * dimensions + dimension] as number);
    if (Math.abs(ahead - needed) < CLOSE && !sharesRange(row, best, rival, dimension)) row.isClose = true;
    if (ahead > lead) lead = ahead;
  }
  if (lead > needed) return BITS.belt;
  const [room, otherRoom] = [roomIn(row, best), roomIn(row, rival)];
  return otherRoom >= 0 && room > otherRoom && Number.isFinite(room) ? BITS.room : 0;
}

/** Whether two sizes are the same in a dimension, so that there is nothing to round differently. */
function sharesRange({ plan }: ColumnRow, a: number, b: number, dimension: number): boolean {
  const { lower, upper } = plan.tables;
  const count = plan.dimensions.length;
  const [one, other] = [a * count + dimension, b * count + dimension];
  return lower[one] === lower[other] && upper[one] === upper[other];
}

/** Why no size stands out where none is likelier than not. */
export function whyBetween(row: ColumnRow): number {
  if (disagrees(row)) return BITS.disagree;
  return isAtBorder(row) ? BITS.between : BITS.unlikely;
}

/** Whether a size takes what is expected of a dimension; one that does not state it takes it in any case. */
function takes({ plan, means }: ColumnRow, size: number, dimension: number): boolean {
  const interval = plan.tables.intervals[size * plan.dimensions.length + dimension];
  return interval === undefined || contains(interval, means[dimension] as number);
}

function disagrees(row: ColumnRow): boolean {
  const { plan, pick, probabilities } = row;
  const count = plan.dimensions.length;
  const states = (dimension: number) => (plan.tables.lower[pick * count + dimension] as number) >= 0;
  for (let suited = 0; suited < count; suited += 1) {
    if (!states(suited) || !takes(row, pick, suited)) continue;
    for (let unsuited = 0; unsuited < count; unsuited += 1) {
      if (!states(unsuited) || takes(row, pick, unsuited)) continue;
      let isTaken = false;
      let isSolved = false;
      for (let size = 0; size < probabilities.length; size += 1) {
        if (!takes(row, size, unsuited)) continue;
        isTaken = true;
        if (takes(row, size, suited)) isSolved = true;
      }
      if (isTaken && !isSolved) return true;
    }
  }
  return false;
}

function isAtBorder(row: ColumnRow): boolean {
  const { plan, pick, scratch, means, sds } = row;
  const { lower, upper, ends, intervals } = plan.tables;
  if (scratch.other < 0) return false;
  const count = plan.dimensions.length;
  for (let dimension = 0; dimension < count; dimension += 1) {
    const [own, theirs] = [pick * count + dimension, scratch.other * count + dimension];
    if ((lower[own] as number) < 0 || (lower[theirs] as number) < 0) continue;
    const [from, to] = [lower[own] as number, upper[own] as number];
    const isUp = (ends[lower[theirs] as number] as number) >= (ends[to] as number);
    const isDown = (ends[upper[theirs] as number] as number) <= (ends[from] as number);
    if (!(isUp || isDown)) continue;
    let [chanceAbove, chanceBelow] = [scratch.above[to] as number, scratch.below[from] as number];
    const interval = intervals[own];
    if (sds[dimension] === 0 && interval !== undefined) {
      const mean = means[dimension] as number;
      const isIn = contains(interval, mean);
      chanceBelow = Number(!isIn && mean <= interval.from);
      chanceAbove = 1 - Number(isIn) - chanceBelow;
    }
    if (isUp && reaches(row, chanceAbove, NEAR_THE_END)) return true;
    if (isDown && reaches(row, chanceBelow, NEAR_THE_END)) return true;
  }
  return false;
}
