import { groupBy, type StudyCellMean } from "./cell-means.ts";
import { compensatedSum } from "./compensated-sum.ts";

/** How measurers' means of the same subjects scatter, parted into what lasts and what changes. */
export interface BetweenMeasurers {
  /** Subjects whom two measurers or more have read. */
  readonly subjects: readonly string[];
  /** Σ over these subjects of (measurers − 1). */
  readonly degreesOfFreedom: number;
  /** Sum of squares of cell means about the mean of their subject, in mm². */
  readonly squares: number;
  /** The part that lasting differences between measurers explain (adjusted for subjects), and what is left. */
  readonly lasting: { readonly squares: number; readonly degreesOfFreedom: number };
  readonly changing: { readonly squares: number; readonly degreesOfFreedom: number };
  /** Mean share of a reading's error variance that is left in a cell mean: 1/repeats in a complete study. */
  readonly errorShare: number;
}

/** Takes the cells apart, each subject by whoever has read it; cells of subjects with one measurer say nothing. */
export function betweenMeasurers(cells: readonly StudyCellMean[]): BetweenMeasurers | undefined {
  const shared = [...groupBy(cells, ({ subject }) => subject)].filter(([, own]) => own.length >= 2);
  if (shared.length === 0) return undefined;
  const measurers = [...new Set(shared.flatMap(([, own]) => own.map(({ measurer }) => measurer)))];
  const position = new Map(measurers.map((measurer, index) => [measurer, index]));
  // The normal equations of lasting differences once each subject's own level is taken off.
  const normal = measurers.map(() => measurers.map(() => 0));
  const right = measurers.map(() => 0);
  const squares: number[] = [];
  const shares: number[] = [];
  let degreesOfFreedom = 0;
  for (const [, own] of shared) {
    const size = own.length;
    const mean = compensatedSum(own.map(({ meanMm }) => meanMm)) / size;
    degreesOfFreedom += size - 1;
    for (const { measurer, meanMm, count } of own) {
      const row = position.get(measurer) ?? 0;
      squares.push((meanMm - mean) ** 2);
      shares.push((1 - 1 / size) / count);
      right[row] = (right[row] ?? 0) + (meanMm - mean);
      for (const other of own) {
        const column = position.get(other.measurer) ?? 0;
        const line = normal[row] ?? [];
        line[column] = (line[column] ?? 0) + (row === column ? 1 : 0) - 1 / size;
      }
    }
  }
  const whole = compensatedSum(squares);
  const { explained, rank } = explain(normal, right);
  const left = degreesOfFreedom - rank;
  const lasting = left === 0 ? whole : Math.min(explained, whole);
  return {
    subjects: shared.map(([subject]) => subject),
    degreesOfFreedom,
    squares: whole,
    lasting: { squares: lasting, degreesOfFreedom: rank },
    changing: { squares: whole - lasting, degreesOfFreedom: left },
    errorShare: compensatedSum(shares) / degreesOfFreedom,
  };
}

/** Pivots below this share of the largest one are rounding: the differences are known up to a constant only. */
const NO_PIVOT = 1e-9;

/** The sum of squares explained by symmetric normal equations of any rank: Gauss–Jordan, largest pivot first. */
function explain(
  normal: readonly (readonly number[])[],
  right: readonly number[],
): { readonly explained: number; readonly rank: number } {
  const rows = normal.map((row, index) => [...row, right[index] ?? 0]);
  const size = rows.length;
  const largest = Math.max(...rows.map((row, index) => row[index] ?? 0));
  const open = new Set(rows.keys());
  let explained = 0;
  let rank = 0;
  while (open.size > 0) {
    const pivot = [...open].reduce((best, index) =>
      (rows[index]?.[index] ?? 0) > (rows[best]?.[best] ?? 0) ? index : best,
    );
    const line = rows[pivot] ?? [];
    const scale = line[pivot] ?? 0;
    if (scale <= NO_PIVOT * largest) break;
    open.delete(pivot);
    rank += 1;
    explained += (line[size] ?? 0) ** 2 / scale;
    for (const index of open) {
      const row = rows[index] ?? [];
      const factor = (row[pivot] ?? 0) / scale;
      for (let column = 0; column <= size; column++) {
        row[column] = (row[column] ?? 0) - factor * (line[column] ?? 0);
      }
    }
  }
  return { explained, rank };
}
