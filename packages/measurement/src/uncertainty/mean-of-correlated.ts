import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite, requireNotNegative } from "../require-number.ts";

/** The mean of readings that share a part of their errors. */
export interface CorrelatedMean {
  /** Mean in mm. */
  readonly mm: number;
  readonly uncertaintyMm: number;
  /** How many independent readings would be worth as much: n / (1 + (n − 1) r). */
  readonly effectiveCount: number;
}

/**
 * The mean of n readings of which each has the standard uncertainty u and each two the correlation r, in mm:
 * u² (1 + (n − 1) r) / n (GUM 5.2.2). With r above 0 no number of readings brings it below u √r.
 *
 * @param readingsMm - at least one reading
 * @param uncertaintyMm - standard uncertainty of one of them, 0 or more
 * @param correlation - of each two, from −1/(n − 1) to 1: less cannot be
 * @throws {@link InvalidArgumentError} when there is no reading, or a figure is not finite or out of range.
 *
 * @example
 * ```ts
 * import { meanOfCorrelated } from "@tapewise/measurement";
 * meanOfCorrelated([430, 434, 438], 8, 0.25);
 * // => { mm: 434, uncertaintyMm: 5.656854249492381, effectiveCount: 2 }
 * ```
 */
export function meanOfCorrelated(
  readingsMm: readonly number[],
  uncertaintyMm: number,
  correlation: number,
): CorrelatedMean {
  const count = readingsMm.length;
  if (count === 0) throw new InvalidArgumentError("readingsMm", readingsMm, "at least one reading");
  readingsMm.forEach((mm, i) => {
    requireFinite(`readingsMm[${i}]`, mm);
  });
  requireNotNegative("uncertaintyMm", uncertaintyMm);
  const least = count === 1 ? -1 : -1 / (count - 1);
  if (!(correlation >= least && correlation <= 1)) {
    throw new InvalidArgumentError("correlation", correlation, `from ${least} to 1 for ${count} readings`);
  }
  const growth = Math.max(0, 1 + (count - 1) * correlation);
  return {
    mm: readingsMm.reduce((sum, mm) => sum + mm, 0) / count,
    uncertaintyMm: uncertaintyMm * Math.sqrt(growth / count),
    effectiveCount: count / growth,
  };
}
