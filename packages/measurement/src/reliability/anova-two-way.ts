import { type AnovaLine, lineOf } from "./anova-one-way.ts";
import { compensatedMean, compensatedSum } from "./compensated-sum.ts";
import { requireTable } from "./require-table.ts";

/** A two-way analysis of variance of a complete table with one value in each cell. */
export interface TwoWayAnova {
  readonly mean: number;
  /** Between rows: subjects. */
  readonly subjects: AnovaLine;
  /** Between columns: measurers. */
  readonly measurers: AnovaLine;
  /** What rows and columns leave: subject × measurer and error, which one value a cell cannot part. */
  readonly residual: AnovaLine;
  /** Within rows: columns and residual together. */
  readonly within: AnovaLine;
}

/**
 * Two-way analysis of variance of a table of subjects (rows) by measurers (columns), one value in each cell.
 * Numerically as careful as {@link oneWayAnova}.
 *
 * @throws {@link InvalidArgumentError} when there are fewer than two rows or columns, rows differ in length, or a
 * value is not finite.
 *
 * @example
 * ```ts
 * import { twoWayAnova } from "@tapewise/measurement";
 * const { subjects, measurers, residual } = twoWayAnova([[430, 434], [440, 446]]);
 * [subjects, measurers, residual].map((line) => line.sumOfSquares); // => [121, 25, 1]
 * ```
 */
export function twoWayAnova(table: readonly (readonly number[])[]): TwoWayAnova {
  const { rows, columns } = requireTable("table", table);
  const shift = compensatedMean(table.flat());
  const moved = table.map((row) => row.map((value) => value - shift));
  const centre = compensatedMean(moved.flat());
  const rowMeans = moved.map(compensatedMean);
  const columnMeans = Array.from({ length: columns }, (_, j) =>
    compensatedMean(moved.map((row) => row[j] ?? 0)),
  );
  const subjects = columns * compensatedSum(rowMeans.map((mean) => (mean - centre) ** 2));
  const measurers = rows * compensatedSum(columnMeans.map((mean) => (mean - centre) ** 2));
  const residual = compensatedSum(
    moved.flatMap((row, i) =>
      row.map((value, j) => (value - (rowMeans[i] ?? 0) - ((columnMeans[j] ?? 0) - centre)) ** 2),
    ),
  );
  const within = compensatedSum(
    moved.flatMap((row, i) => row.map((value) => (value - (rowMeans[i] ?? 0)) ** 2)),
  );
  return {
    mean: shift + centre,
    subjects: lineOf(subjects, rows - 1),
    measurers: lineOf(measurers, columns - 1),
    residual: lineOf(residual, (rows - 1) * (columns - 1)),
    within: lineOf(within, rows * (columns - 1)),
  };
}
