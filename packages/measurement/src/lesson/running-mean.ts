import { InvalidArgumentError } from "@tapewise/outcome";
import { studentTQuantile } from "@tapewise/statistics";
import { requireFinite, requireNotNegative, requireShare } from "../require-number.ts";
import { insertSorted, middleOf } from "./sorted-values.ts";

/** The state after some readings, to plot against their number. All lengths in mm. */
export interface RunningPoint {
  readonly count: number;
  readonly readingMm: number;
  readonly meanMm: number;
  readonly medianMm: number;
  /** Sample standard deviation so far; absent for the first reading. */
  readonly sdMm?: number;
  /** Band of the mean; absent for the first reading where the spread is not stated. */
  readonly lowerMm?: number;
  readonly upperMm?: number;
}

/** How the band is made. */
export interface RunningMeanOptions {
  /** Probability of the band; 0.95 where it is left out. */
  readonly probability?: number;
  /** Known standard deviation of one reading, in mm. Without it that of the readings so far is taken. */
  readonly noiseMm?: number;
}

/**
 * The mean of the first 1, 2, … readings with the band that their scatter alone would give it: mean ± t s/√n with
 * n − 1 degrees of freedom (GUM G.3.2), or ± z σ/√n where the spread is stated. The band knows nothing of what
 * lasts: around the mean of readings that are all off by a centimetre it shrinks to nothing all the same, and that
 * is what there is to learn from it. A class's own readings serve as well as drawn ones.
 *
 * @throws {@link InvalidArgumentError} when there is no reading or a figure is not finite or out of range.
 *
 * @example
 * ```ts
 * import { runningMean } from "@tapewise/measurement";
 * const [, second, third] = runningMean([430, 440, 432]);
 * [second?.meanMm, third?.meanMm, third?.medianMm]; // => [435, 434, 432]
 * third?.upperMm?.toFixed(1); // => "447.1"
 * ```
 */
export function runningMean(
  readingsMm: ArrayLike<number>,
  options: RunningMeanOptions = {},
): readonly RunningPoint[] {
  const { probability = 0.95, noiseMm } = options;
  requireShare("probability", probability);
  if (noiseMm !== undefined) requireNotNegative("noiseMm", noiseMm);
  if (readingsMm.length === 0) throw new InvalidArgumentError("readingsMm", [], "at least one reading");
  const sorted = new Float64Array(readingsMm.length);
  let meanMm = 0;
  let squares = 0;
  return Array.from(readingsMm, (readingMm, i) => {
    requireFinite(`readingsMm[${i}]`, readingMm);
    const count = i + 1;
    insertSorted(sorted, i, readingMm);
    // Welford's update keeps its digits for readings that differ little.
    const before = readingMm - meanMm;
    meanMm += before / count;
    squares += before * (readingMm - meanMm);
    const sdMm = count > 1 ? Math.sqrt(squares / i) : undefined;
    const spread = noiseMm ?? sdMm;
    const df = noiseMm === undefined ? i : Number.POSITIVE_INFINITY;
    const half =
      spread === undefined
        ? undefined
        : (-studentTQuantile((1 - probability) / 2, df) * spread) / Math.sqrt(count);
    return {
      count,
      readingMm,
      meanMm,
      medianMm: middleOf(sorted, count),
      ...(sdMm === undefined ? {} : { sdMm }),
      ...(half === undefined ? {} : { lowerMm: meanMm - half, upperMm: meanMm + half }),
    };
  });
}
