import { bivariateNormalBox, normalIntervalProbability } from "@tapewise/statistics";
import { requireFinite, requireNotNegative, requirePositive } from "../require-number.ts";
import { type SizeBounds, sizeRegions } from "./size-regions.ts";

/** Whom a size is picked for: somebody of whom only this is known before the tape is taken. Lengths in mm. */
export interface LengthBelief {
  readonly meanMm: number;
  /** Standard deviation, above 0. */
  readonly sdMm: number;
}

/**
 * The chance that the size picked by a measured length is one that the person's length lies in, from 0 to 1,
 * for a standard uncertainty of the measurement in mm.
 *
 * The length is N(m, s²), the measurement adds N(0, u²), and the size is picked in which the measured length has
 * most room to its nearer end: the middle of an overlap, where either size is right, and of a gap decides. The chance is a sum of
 * boxes under the bivariate normal distribution with the correlation s/√(s² + u²), so it needs no
 * simulation. It falls as u grows, from the share of people that any size is made for at u = 0.
 *
 * @throws {@link InvalidArgumentError} when there is no size, bounds stand the wrong way round, or a figure is not
 * finite or out of range.
 *
 * @example
 * ```ts
 * import { chanceOfRightSize } from "@tapewise/measurement";
 * const sizes = [{ from: 380, to: 430 }, { from: 430, to: 480 }, { from: 480, to: 530 }];
 * const anybody = { meanMm: 455, sdMm: 25 };
 * [0, 5, 10].map((uncertaintyMm) => chanceOfRightSize(sizes, anybody, uncertaintyMm).toFixed(3));
 * // => ["0.997", "0.920", "0.843"]
 * ```
 */
export function chanceOfRightSize(
  sizes: readonly SizeBounds[],
  belief: LengthBelief,
  uncertaintyMm: number,
): number {
  requireFinite("belief.meanMm", belief.meanMm);
  requirePositive("belief.sdMm", belief.sdMm);
  requireNotNegative("uncertaintyMm", uncertaintyMm);
  const { meanMm, sdMm } = belief;
  const measuredSd = Math.hypot(sdMm, uncertaintyMm);
  const correlation = sdMm / measuredSd;
  const chance = sizeRegions(sizes).reduce((sum, { from, to, pickedFrom, pickedTo }) => {
    const length = [(from - meanMm) / sdMm, (to - meanMm) / sdMm] as const;
    if (correlation === 1) {
      const low = Math.max(from, pickedFrom);
      const high = Math.min(to, pickedTo);
      if (low >= high) return sum;
      return sum + normalIntervalProbability((low - meanMm) / sdMm, (high - meanMm) / sdMm);
    }
    const picked = [(pickedFrom - meanMm) / measuredSd, (pickedTo - meanMm) / measuredSd] as const;
    return sum + bivariateNormalBox(...length, ...picked, correlation);
  }, 0);
  return Math.min(1, chance);
}
