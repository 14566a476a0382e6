import type { MethodFigures } from "./method-figures.ts";
import { type QuickLimits, ROOM } from "./quick-limits.ts";
import { MOST_READINGS } from "./scanned-person.ts";

/** Steps that people round to by habit, in mm, and the chance below which that is named. */
const HABITS = [25.4, 12.7, 10, 6.35, 5];
const SIGNIFICANCE = 0.01;

/** Whether two readings or more give no reason to ask. */
export function isUnquestioned(
  lengths: Float64Array,
  first: number,
  count: number,
  mean: number,
  sd: number,
  squares: number,
  step: number,
  method: MethodFigures,
  limits: QuickLimits,
): boolean {
  const usual = Math.sqrt(method.mostRepeat + step ** 2 / 12);
  if (squares >= (limits.scatter[count] as number) * usual * usual) return false;
  if (count > 2 && isAnyApart(lengths, first, count, mean, sd, step, usual, limits)) return false;
  if (count > 2 && squares === 0 && isTooAlike(count, step, method)) return false;
  if (count > 3 && !isSteady(lengths, first, count, mean, squares, usual, limits.drift[count] as number)) {
    return false;
  }
  return !isRoundedByHabit(lengths, first, count, step);
}

/** Whether any reading is as far from the middle one as it takes to be asked about. */
function isAnyApart(
  lengths: Float64Array,
  first: number,
  count: number,
  mean: number,
  sd: number,
  step: number,
  usual: number,
  limits: QuickLimits,
): boolean {
  const middle = medianOf(lengths, first, count);
  let farthest = 0;
  let fromMean = 0;
  for (let k = first; k < first + count; k += 1) {
    farthest = Math.max(farthest, Math.abs((lengths[k] as number) - middle));
    fromMean = Math.max(fromMean, Math.abs((lengths[k] as number) - mean));
  }
  if (farthest <= Math.max(2 * usual, 1.5 * step) * (1 - ROOM)) return false;
  const far = FAR * usual * Math.sqrt(1 + 1 / (count - 1)) * (1 - ROOM);
  // Grubbs' statistic with what rounding may hide, as the questions have it.
  return farthest > far || fromMean > (limits.grubbs[count] as number) * Math.sqrt(sd ** 2 + step ** 2 / 12);
}

/** Two-sided 1 in 1000 point of the normal distribution. */
const FAR = 3.2905;

const sorted = new Float64Array(MOST_READINGS);

function medianOf(lengths: Float64Array, first: number, count: number): number {
  for (let k = 0; k < count; k += 1) {
    const length = lengths[first + k] as number;
    let at = k;
    for (; at > 0 && (sorted[at - 1] as number) > length; at -= 1) sorted[at] = sorted[at - 1] as number;
    sorted[at] = length;
  }
  const half = count >> 1;
  const upper = sorted[half] as number;
  return count % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}

function isSteady(
  lengths: Float64Array,
  first: number,
  count: number,
  mean: number,
  squares: number,
  usual: number,
  most: number,
): boolean {
  let cross = 0;
  for (let k = 0; k < count; k += 1) cross += (k - (count - 1) / 2) * ((lengths[first + k] as number) - mean);
  const orders = (count * (count ** 2 - 1)) / 12;
  const slope = cross / orders;
  if (Math.abs(slope * (count - 1)) <= usual * (1 - ROOM)) return true;
  const residual = squares - slope * cross;
  return residual > 0 && Math.abs(slope) < most * Math.sqrt(residual / (count - 2) / orders);
}

/** Whether readings that all fall on one mark are fewer than one in a hundred would be. */
function isTooAlike(count: number, step: number, method: MethodFigures): boolean {
  const oneMark = Math.min(1, step / Math.sqrt(method.repeat * 2 * Math.PI));
  return oneMark ** (count - 1) / Math.sqrt(count) < SIGNIFICANCE * (1 + ROOM);
}

/** Whether all readings are multiples of a coarser step than they are written to, and that may be no chance. */
function isRoundedByHabit(lengths: Float64Array, first: number, count: number, step: number): boolean {
  for (const habit of HABITS) {
    let isMultiple = true;
    for (let k = first; isMultiple && k < first + count; k += 1) {
      const ratio = (lengths[k] as number) / habit;
      isMultiple = Math.abs(ratio - Math.round(ratio)) < 2e-9 * Math.max(1, ratio);
    }
    if (!isMultiple) continue;
    let distinct = 0;
    for (let k = first; k < first + count; k += 1) {
      let isNew = true;
      for (let other = first; other < k; other += 1) if (lengths[other] === lengths[k]) isNew = false;
      if (isNew) distinct += 1;
    }
    if ((step / habit) ** distinct < SIGNIFICANCE * (1 + ROOM)) return true;
  }
  return false;
}
