import { InvalidArgumentError } from "@tapewise/outcome";
import { requireCount } from "../require-number.ts";
import { type ReadingError, requireReadingError, uncertaintyOf } from "./reading-error.ts";

/** What a number of readings brings. All lengths in mm. */
export interface AveragingRow {
  readonly count: number;
  /** Standard uncertainty of the mean. */
  readonly uncertaintyMm: number;
  /** The part of it that averaging shrinks: r/√n. */
  readonly averagedMm: number;
  /** The part of it that stays. */
  readonly lastingMm: number;
  /** The share of the variance that stays, 0 to 1. */
  readonly lastingShare: number;
  /** By how much the uncertainty is below that of one reading. */
  readonly gainMm: number;
  /** The share of all that averaging could ever gain, 0 to 1; 1 where there is nothing to gain. */
  readonly gainShare: number;
}

/**
 * What averaging can do and what it cannot: the standard uncertainty of the mean of n readings,
 * u² = l² + r²/n, for each n, with the part l that stays and the part r/√n that shrinks.
 *
 * @param counts - whole numbers above 0; 1 to 10 where they are left out
 * @throws {@link InvalidArgumentError} when a figure is not finite or out of range, or there is no count.
 *
 * @example
 * ```ts
 * import { averagingTable } from "@tapewise/measurement";
 * averagingTable({ perReadingMm: 8, lastingMm: 3 }, [1, 4, 16]).map((row) => row.uncertaintyMm.toFixed(2));
 * // => ["8.54", "5.00", "3.61"]
 * averagingTable({ perReadingMm: 8, lastingMm: 3 }, [4])[0]?.lastingShare; // => 0.36
 * ```
 */
export function averagingTable(
  error: ReadingError,
  counts: readonly number[] = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
): readonly AveragingRow[] {
  requireReadingError(error);
  if (counts.length === 0) throw new InvalidArgumentError("counts", counts, "at least one count");
  const { lastingMm } = error;
  const one = uncertaintyOf(error, 1);
  return counts.map((count, i) => {
    requireCount(`counts[${i}]`, count);
    const uncertaintyMm = uncertaintyOf(error, count);
    const gainMm = one - uncertaintyMm;
    return {
      count,
      uncertaintyMm,
      averagedMm: error.perReadingMm / Math.sqrt(count),
      lastingMm,
      lastingShare: uncertaintyMm === 0 ? 0 : (lastingMm / uncertaintyMm) ** 2,
      gainMm,
      gainShare: one > lastingMm ? gainMm / (one - lastingMm) : 1,
    };
  });
}
