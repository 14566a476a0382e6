import { contains } from "@tapewise/intervals";
import { BETWEEN, bitOf, FITS, OUTSIDE, TWO_SIZES } from "./column-codes.ts";
import type { ColumnRow } from "./column-row.ts";

/** Two figures that differ by less may stand the other way round where they are worked out another way. */
const CLOSE = 1e-13;
const CLOSE_MM = 1e-11;
/** Two ways to the same figure may differ in their last digits. */
const ROUNDING = 1e-9;
/** A dimension lies near an end of a size, or beyond it, when it passes it with this probability. */
const NEAR_THE_END = 0.35;

const BITS = {
  nearest: bitOf("nearest-size"),
  equal: bitOf("equal-chance"),
  most: bitOf("most-probable"),
  build: bitOf("build-takes-longer"),
  harness: bitOf("harness-adjusts"),
  belt: bitOf("hip-belt-decides"),
  room: bitOf("room-on-both-sides"),
  capacity: bitOf("capacity-differs"),
  beyond: bitOf("beyond-the-chart"),
  disagree: bitOf("dimensions-disagree"),
  between: bitOf("between-two-sizes"),
  unlikely: bitOf("no-size-likely"),
};

/**
 * Picks a size, settles ties, says what the probabilities amount to, and why: the rules of `recommend`, on numbers.
 * Wherever a decision hangs on the last digits of a figure, the row says so.
 */
export function settleRow(row: ColumnRow): void {
  row.isClose = false;
  row.reasons = 0;
  rank(row);
  const { scratch, plan } = row;
  const tie = findTie(row);
  scratch.isHeld = tie !== 0;
  row.reasons |= tie;
  if (tie === 0) row.reasons |= whyBefore(row);
  if (row.pick === scratch.best) row.reasons |= whyBest(row);
  const beyond = judge(row);
  if (row.verdict === TWO_SIZES || row.verdict === BETWEEN) {
    const own = plan.tables.capacity[row.pick] as number;
    const others = scratch.other < 0 ? Number.NaN : (plan.tables.capacity[scratch.other] as number);
    if (own < others || own > others) row.reasons |= BITS.capacity;
  }
  if (beyond) row.reasons |= BITS.beyond;
  else if (row.verdict === BETWEEN) row.reasons |= whyBetween(row);
}

/** Whether a figure is at or above a limit; a figure that is as good as at it makes the row close. */
function reaches(row: ColumnRow, figure: number, limit: number): boolean {
  if (Math.abs(figure - limit) < CLOSE) row.isClose = true;
  return figure >= limit;
}

/** The best size and the best of the others. */
function rank(row: ColumnRow): void {
  const { probabilities, misfits, plan, scratch } = row;
  const { fitSteps, misfitSteps } = scratch;
  for (let size = 0; size < probabilities.length; size += 1) {
    fitSteps[size] = Math.round((probabilities[size] as number) * 1e9);
    misfitSteps[size] = Math.round((misfits[size] as number) * 1e9);
    reaches(row, probabilities[size] as number, plan.policy.hopelessProbability);
  }
  let best = 0;
  let other = -1;
  for (let size = 1; size < probabilities.length; size += 1) {
    if (isBefore(row, size, best)) {
      other = best;
      best = size;
    } else if (other < 0 || isBefore(row, size, other)) other = size;
  }
  scratch.best = best;
  scratch.other = other;
}

/** Whether one size stands before another: fit, expected misfit, room, and the order of the ranges. */
function isBefore(row: ColumnRow, a: number, b: number): boolean {
  const { probabilities, misfits, plan, scratch } = row;
  const { hopelessProbability } = plan.policy;
  const own = probabilities[a] as number;
  const theirs = probabilities[b] as number;
  const steps = scratch.fitSteps[a] as number;
  const otherSteps = scratch.fitSteps[b] as number;
  if (steps !== otherSteps && Math.abs(own - theirs) < CLOSE) row.isClose = true;
  const standing = own < hopelessProbability ? 0 : steps;
  const otherStanding = theirs < hopelessProbability ? 0 : otherSteps;
  if (standing !== otherStanding) return standing > otherStanding;
  const misfit = scratch.misfitSteps[a] as number;
  const otherMisfit = scratch.misfitSteps[b] as number;
  if (misfit !== otherMisfit) {
    if (Math.abs((misfits[a] as number) - (misfits[b] as number)) < CLOSE_MM) row.isClose = true;
    return misfit < otherMisfit;
  }
  if (steps !== otherSteps) return steps > otherSteps;
  const room = Math.round(roomIn(row, a) * 1e6);
  const otherRoom = Math.round(roomIn(row, b) * 1e6);
  if (room !== otherRoom) return room > otherRoom;
  return (plan.tables.order[a] as number) < (plan.tables.order[b] as number);
}

function roomIn({ plan, means }: ColumnRow, size: number): number {
  const { lower, upper, ends } = plan.tables;
  const at = size * plan.dimensions.length;
  const mean = means[0] as number;
  return Math.min(mean - (ends[lower[at] as number] as number), (ends[upper[at] as number] as number) - mean);
}

/** Sets the pick, and gives the bit of what beside its fit speaks for it. */
function findTie(row: ColumnRow): number {
  const { plan, probabilities, scratch } = row;
  const { fitProbability, tieLoss } = plan.policy;
  const { harness, length, setsLength } = plan.tables;
  const { best } = scratch;
  row.pick = best;
  const byBuild = row.hasBuild && setsLength;
  const byHarness = harness[best] === 1;
  const floor = Math.max(fitProbability, (probabilities[best] as number) - tieLoss);
  if (!(byBuild || byHarness) || !reaches(row, probabilities[best] as number, floor)) return 0;
  const isTied = (size: number) => reaches(row, probabilities[size] as number, floor);
  if (byBuild) {
    let longest = best;
    for (let size = 0; size < probabilities.length; size += 1) {
      if (size === longest || !isTied(size)) continue;
      const step = (length[size] as number) - (length[longest] as number);
      if (step > 0 || (step === 0 && longest !== best && isBefore(row, size, longest))) longest = size;
    }
    let other = -1;
    for (let size = 0; size < probabilities.length; size += 1) {
      if ((length[size] as number) >= (length[longest] as number) || !isTied(size)) continue;
      if (other < 0 || isBefore(row, size, other)) other = size;
    }
    if (other >= 0) {
      row.pick = longest;
      scratch.other = other;
      return BITS.build;
    }
  }
  if (!byHarness) return 0;
  let moved = -1;
  for (let size = 0; size < probabilities.length; size += 1) {
    if (harness[size] !== 2 || !isTied(size)) continue;
    if (moved < 0 || isBefore(row, size, moved)) moved = size;
  }
  if (moved < 0) return 0;
  row.pick = moved;
  scratch.other = best;
  return BITS.harness;
}

function whyBest(row: ColumnRow): number {
  const { probabilities, plan, pick, scratch } = row;
  const own = probabilities[pick] as number;
  if (own < plan.policy.hopelessProbability) return BITS.nearest;
  if (scratch.other < 0) return BITS.most;
  const apart = Math.abs(own - (probabilities[scratch.other] as number));
  if (Math.abs(apart - ROUNDING) < CLOSE) row.isClose = true;
  return apart < ROUNDING ? BITS.equal : BITS.most;
}

/** Why the best stands before the one that the main dimension allows next. */
function whyBefore(row: ColumnRow): number {
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

/** Sets the verdict before further readings; gives whether an end of the chart is passed. */
function judge(row: ColumnRow): boolean {
  const { plan, probabilities, pick } = row;
  const { fitProbability, tieLoss } = plan.policy;
  const own = probabilities[pick] as number;
  if (!reaches(row, own, fitProbability)) {
    const isBeyond = passesAnEnd(row);
    row.verdict = isBeyond ? OUTSIDE : BETWEEN;
    return isBeyond;
  }
  row.verdict = FITS;
  for (let size = 0; size < probabilities.length; size += 1) {
    if (size === pick) continue;
    const theirs = probabilities[size] as number;
    if (Math.abs(theirs + own - 1 - ROUNDING) < CLOSE) row.isClose = true;
    const goesWithPick = theirs + own > 1 + ROUNDING;
    if (goesWithPick && reaches(row, theirs, fitProbability)) {
      row.verdict = TWO_SIZES;
      return false;
    }
    if (!goesWithPick && reaches(row, theirs, own - tieLoss)) row.verdict = BETWEEN;
  }
  return false;
}

function passesAnEnd(row: ColumnRow): boolean {
  const { plan, means, sds, scratch } = row;
  const { lowest, highest, hulls } = plan.tables;
  for (let dimension = 0; dimension < plan.dimensions.length; dimension += 1) {
    const hull = hulls[dimension];
    if (hull === undefined) continue;
    const chance =
      sds[dimension] === 0
        ? Number(!contains(hull, means[dimension] as number))
        : Math.max(
            scratch.below[lowest[dimension] as number] as number,
            scratch.above[highest[dimension] as number] as number,
          );
    if (reaches(row, chance, plan.policy.fitProbability)) return true;
  }
  return false;
}

/** Why no size stands out where none is likelier than not. */
function whyBetween(row: ColumnRow): number {
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
