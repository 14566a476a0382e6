import { contains } from "@tapewise/intervals";
import { normalCdf, studentTCdf } from "@tapewise/statistics";
import { CLOSE, reaches } from "./close-call.ts";
import { BETWEEN, FITS, OUTSIDE, TWO_SIZES } from "./column-codes.ts";
import type { ColumnRow } from "./column-row.ts";
import { whyBefore, whyBest, whyBetween } from "./explain-row.ts";
import { isBefore, rankRow } from "./rank-row.ts";
import { BITS } from "./reason-bits.ts";

/** Two ways to the same figure may differ in their last digits. */
const ROUNDING = 1e-9;

/**
 * Picks a size, settles ties, says what the probabilities amount to, and why: the rules of `recommend`, on numbers.
 * Wherever a decision hangs on the last digits of a figure, the row says so.
 */
export function settleRow(row: ColumnRow): void {
  row.isClose = false;
  row.reasons = 0;
  rankRow(row);
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
    const mean = means[dimension] as number;
    if (sds[dimension] !== 0 && (mean === hull.from || mean === hull.to)) {
      // Readings often fall right on an end, and half of what is expected lies beyond it: no figure to be taken
      // from a table. The other end is farther off.
      const degrees = row.degrees[dimension] as number;
      const half = degrees === Number.POSITIVE_INFINITY ? normalCdf(0) : studentTCdf(0, degrees);
      if (half >= plan.policy.fitProbability) return true;
      continue;
    }
    const chance =
      sds[dimension] === 0
        ? Number(!contains(hull, mean))
        : Math.max(
            scratch.below[lowest[dimension] as number] as number,
            scratch.above[highest[dimension] as number] as number,
          );
    if (reaches(row, chance, plan.policy.fitProbability)) return true;
  }
  return false;
}
