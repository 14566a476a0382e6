import { type DimensionId, dimensionIds, plausibleLimits } from "@tapewise/landmarks";
import { grubbsCriticalValue, roundingCorrelation } from "@tapewise/measurement";
import { chiSquareQuantile, studentTQuantile } from "@tapewise/statistics";
import { type MethodFigures, methodAt, methodFigures } from "./method-figures.ts";
import { MOST_READINGS, type ScannedPerson } from "./scanned-person.ts";

/** Estimates of every dimension, in mm. */
export interface QuickEstimates {
  readonly mean: Float64Array;
  readonly uncertainty: Float64Array;
  readonly degrees: Float64Array;
  readonly lasting: Float64Array;
  readonly perReading: Float64Array;
}

/** Estimates to be filled in. */
export function createQuickEstimates(): QuickEstimates {
  const column = () => new Float64Array(dimensionIds.length);
  return {
    mean: column(),
    uncertainty: column(),
    degrees: column(),
    lasting: column(),
    perReading: column(),
  };
}

/** What limits readings before anything is asked about them, with a little room for the last digits. */
interface Limits {
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  /** For each number of readings: the greatest chi-square, t of a drift and statistic of Grubbs that pass. */
  readonly scatter: Float64Array;
  readonly drift: Float64Array;
  readonly grubbs: Float64Array;
}

const ROOM = 1e-9;
/** Steps that people round to by habit, in mm, and the chance below which that is named. */
const HABITS = [25.4, 12.7, 10, 6.35, 5];
const SIGNIFICANCE = 0.01;

/** Makes a reader of scanned readings: whether there is nothing to ask about them, and the estimate if so. */
export function createQuickEstimator(
  into: QuickEstimates,
): (person: ScannedPerson, dimension: number) => boolean {
  const methods = methodFigures();
  const limits = limitsOf();
  return (person, dimension) => {
    const { by, tool, afresh } = person;
    const method = methods[methodAt(dimension, by, tool, afresh)];
    return method !== undefined && estimate(person, dimension, method, limits, into);
  };
}

function limitsOf(): Limits {
  const adults = dimensionIds.map((id: DimensionId) => plausibleLimits(id, "adult"));
  const counts = Array.from({ length: MOST_READINGS + 1 }, (_, count) => count);
  return {
    lowest: Float64Array.from(adults, ({ from }) => from),
    highest: Float64Array.from(adults, ({ to }) => to),
    scatter: Float64Array.from(counts, (n) => (n < 2 ? 0 : chiSquareQuantile(0.99, n - 1) * (1 - ROOM))),
    drift: Float64Array.from(counts, (n) => (n < 4 ? 0 : -studentTQuantile(0.005, n - 2) * (1 - ROOM))),
    grubbs: Float64Array.from(counts, (n) => (n < 3 ? 0 : grubbsCriticalValue(n, 0.05) * (1 - ROOM))),
  };
}

/** The same figures as `safeEstimate`, from the table of defaults. */
function estimate(
  person: ScannedPerson,
  dimension: number,
  method: MethodFigures,
  limits: Limits,
  into: QuickEstimates,
): boolean {
  const { lengths, counts, steps } = person;
  const count = counts[dimension] as number;
  const first = dimension * MOST_READINGS;
  const step = steps[dimension] as number;
  const lowest = limits.lowest[dimension] as number;
  const highest = limits.highest[dimension] as number;
  for (let k = first; k < first + count; k += 1) {
    const length = lengths[k] as number;
    if (!(length >= lowest && length <= highest)) return false;
  }
  const mean = meanOf(lengths, first, count);
  let squares = 0;
  for (let k = first; k < first + count; k += 1) {
    const difference = (lengths[k] as number) - mean;
    squares += difference * difference;
  }
  const sd = count > 1 ? Math.sqrt(squares / (count - 1)) : 0;
  const rounding = step ** 2 / 12;
  if (count > 1 && !isUnquestioned(lengths, first, count, mean, sd, squares, step, method, limits))
    return false;

  const degrees = method.degrees + count - 1;
  let repeat = method.repeat;
  if (count > 1) {
    const share = (count - 1) / degrees;
    const shown = shownVariance(method.repeat, step);
    repeat = scatterBehind(shown * (1 - share) + sd ** 2 * share, step);
    if (!(repeat > 0)) return false;
  }
  const together = correlation(repeat, step);
  const ofMean = (rounding * (1 + (count - 1) * together)) / count;
  const scale = (method.scale * mean) ** 2;
  const own = repeat / count;
  const lasting = method.bias + scale + method.finding;
  const variance = own + ofMean + lasting;
  const doubt = own ** 2 / degrees + (method.bias ** 2 + scale ** 2 + method.finding ** 2) / method.degrees;
  into.mean[dimension] = mean;
  into.uncertainty[dimension] = Math.sqrt(variance);
  into.degrees[dimension] = variance ** 2 / doubt;
  into.lasting[dimension] = Math.sqrt(lasting + rounding * together);
  into.perReading[dimension] = Math.sqrt(repeat + rounding * (1 - together));
  return true;
}

/** The compensated mean, operation by operation that of the library which `summarise` goes by. */
function meanOf(lengths: Float64Array, first: number, count: number): number {
  let sum = lengths[first] as number;
  let correction = 0;
  for (let k = first + 1; k < first + count; k += 1) {
    const length = lengths[k] as number;
    const transition = sum + length;
    correction += Math.abs(sum) >= Math.abs(length) ? sum - transition + length : length - transition + sum;
    sum = transition;
  }
  return (sum + correction) / count;
}

/** Whether two readings or more give no reason to ask. */
function isUnquestioned(
  lengths: Float64Array,
  first: number,
  count: number,
  mean: number,
  sd: number,
  squares: number,
  step: number,
  method: MethodFigures,
  limits: Limits,
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
  limits: Limits,
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

/** From so many steps of scatter on, rounding errors of different readings have nothing to do with each other. */
const FREE_OF_ROUNDING = 1.2;

function correlation(variance: number, step: number): number {
  const scatter = Math.sqrt(variance);
  return scatter > FREE_OF_ROUNDING * step ? 0 : roundingCorrelation(scatter, step);
}

function shownVariance(variance: number, step: number): number {
  return variance + (step ** 2 / 12) * (1 - correlation(variance, step));
}

/**
 * The variance behind a shown one. Where readings scatter over some steps, what rounding adds is all but a number,
 * and putting it in a few times settles it; else by false position (the Illinois variant of M. Dowell & P. Jarratt
 * 1971), for it rises steadily.
 */
function scatterBehind(shown: number, step: number): number {
  const rounding = step ** 2 / 12;
  let variance = shown - rounding;
  for (let turn = 0; variance > 0 && turn < MOST_TURNS; turn += 1) {
    const next = shown - rounding * (1 - correlation(variance, step));
    if (Math.abs(next - variance) <= 1e-15 * next) return next;
    variance = next;
  }
  let [low, high] = [Math.max(0, shown - rounding), shown];
  let [less, more] = [shownVariance(low, step) - shown, shownVariance(high, step) - shown];
  for (let turn = 0; less < 0 && more > 0 && turn < 60; turn += 1) {
    const middle = (low * more - high * less) / (more - less);
    const off = shownVariance(middle, step) - shown;
    if (Math.abs(off) <= 1e-15 * shown) return middle;
    if (off < 0) {
      if (middle - low < 1e-16 * shown) return middle;
      [low, less] = [middle, off];
      more /= 2;
    } else {
      if (high - middle < 1e-16 * shown) return middle;
      [high, more] = [middle, off];
      less /= 2;
    }
  }
  return Number.NaN;
}

const MOST_TURNS = 6;
