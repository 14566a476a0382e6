import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareQuantile } from "@tapewise/statistics";
import { requireShare } from "../require-number.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";
import type { IntervalEstimate } from "./interval-estimate.ts";
import { requireValue } from "./require-table.ts";

/** Conventions of the repeatability coefficient. */
export interface RepeatabilityOptions {
  /** 1.96 where it is left out; 2 is in use as well (Bland & Altman 1986). */
  readonly multiplier?: number;
  /**
   * `zero`, where it is left out: two readings by the same way have the same mean, so that their differences
   * scatter about 0 (Bland & Altman 1986, after BS 5497-1:1979). `mean`: a drift from each reading to the next is
   * taken out first.
   */
  readonly about?: "zero" | "mean";
  /** Probability of the interval; 0.95 where it is left out. */
  readonly confidence?: number;
}

/** How far apart two readings by the same way may be. */
export interface Repeatability {
  /** Two readings of the same subject differ by less in about 95 of 100 pairs. */
  readonly coefficient: IntervalEstimate;
  /** Standard deviation of a single reading about the subject's own value: the technical error of measurement. */
  readonly withinSd: number;
  readonly degreesOfFreedom: number;
}

/**
 * Repeatability coefficient, `multiplier` × √2 × s_w, from a table of repeated readings by the same way: a row for
 * each subject. With two readings that is `multiplier` × √(Σd²/n) about zero and `multiplier` × the standard
 * deviation of the differences about their mean. (J. M. Bland & D. G. Altman, 1986 and 1999, 4.1.) The interval is
 * that of a standard deviation (χ²), exact for normal errors.
 *
 * @param table - one row or more of two readings or more, all rows alike (two rows or more about the mean)
 * @throws {@link InvalidArgumentError} when the table is not such a one or an option is out of range.
 *
 * @example
 * ```ts
 * import { repeatabilityCoefficient } from "@tapewise/measurement";
 * const table = [[430, 433], [446, 442], [412, 412]];
 * repeatabilityCoefficient(table, { multiplier: 2 }).coefficient.value.toFixed(3); // => "5.774"
 * repeatabilityCoefficient(table).withinSd.toFixed(3); // => "2.041"
 * ```
 */
export function repeatabilityCoefficient(
  table: readonly (readonly number[])[],
  options: RepeatabilityOptions = {},
): Repeatability {
  const { multiplier = 1.96, about = "zero", confidence = 0.95 } = options;
  if (!(multiplier > 0 && multiplier <= 10)) {
    throw new InvalidArgumentError("options.multiplier", multiplier, "a number above 0 and up to 10");
  }
  if (about !== "zero" && about !== "mean") {
    throw new InvalidArgumentError("options.about", about, "zero or mean");
  }
  requireShare("options.confidence", confidence);
  const columns = requireRepeats(table, about === "mean" ? 2 : 1);
  const rests = table.map((row) => {
    const own = compensatedMean(row);
    return row.map((value) => value - own);
  });
  const drifts = Array.from({ length: columns }, (_, j) =>
    about === "zero" ? 0 : compensatedMean(rests.map((row) => row[j] ?? 0)),
  );
  const squares = compensatedSum(
    rests.flatMap((row) => row.map((value, j) => (value - (drifts[j] ?? 0)) ** 2)),
  );
  const degreesOfFreedom = (table.length - (about === "zero" ? 0 : 1)) * (columns - 1);
  const withinSd = Math.sqrt(squares / degreesOfFreedom);
  const value = multiplier * Math.SQRT2 * withinSd;
  const bound = (share: number): number =>
    value * Math.sqrt(degreesOfFreedom / chiSquareQuantile(share, degreesOfFreedom));
  return {
    coefficient: { value, lower: bound((1 + confidence) / 2), upper: bound((1 - confidence) / 2) },
    withinSd,
    degreesOfFreedom,
  };
}

function requireRepeats(table: readonly (readonly number[])[], least: number): number {
  if (!(Array.isArray(table) && table.length >= least)) {
    throw new InvalidArgumentError("table", table, `a table of ${least} rows or more`);
  }
  const columns: unknown = table[0]?.length;
  if (!(typeof columns === "number" && columns >= 2)) {
    throw new InvalidArgumentError("table[0]", table[0], "a row of two readings or more");
  }
  for (const [i, row] of table.entries()) {
    if (!(Array.isArray(row) && row.length === columns)) {
      throw new InvalidArgumentError(`table[${i}]`, row, `a row of ${columns} readings like the first`);
    }
    for (const [j, value] of row.entries()) requireValue(`table[${i}][${j}]`, value);
  }
  return columns;
}
