import { dimensionIds } from "@tapewise/landmarks";
import { type MethodFigures, methodAt, methodFigures } from "./method-figures.ts";
import { type QuickLimits, quickLimits } from "./quick-limits.ts";
import { isUnquestioned } from "./quick-questions.ts";
import { correlation, scatterBehind, shownVariance } from "./quick-scatter.ts";
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

/** Makes a reader of scanned readings: whether there is nothing to ask about them, and the estimate if so. */
export function createQuickEstimator(
  into: QuickEstimates,
): (person: ScannedPerson, dimension: number) => boolean {
  const methods = methodFigures();
  const limits = quickLimits();
  return (person, dimension) => {
    const { by, tool, afresh } = person;
    const method = methods[methodAt(dimension, by, tool, afresh)];
    return method !== undefined && estimate(person, dimension, method, limits, into);
  };
}

/** The same figures as `safeEstimate`, from the table of defaults. */
function estimate(
  person: ScannedPerson,
  dimension: number,
  method: MethodFigures,
  limits: QuickLimits,
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
