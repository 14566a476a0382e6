import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { compensatedSum } from "./compensated-sum.ts";
import type { RemlCells } from "./reml-cells.ts";

/**
 * Sum of squares that subjects and, where they count, measurers leave when both are fixed: least squares, subjects
 * eliminated. Over σ² it is chi-square distributed, whatever cells are missing.
 */
export function fixedSquares(data: RemlCells, hasMeasurers: boolean): number {
  const { cells, subjects, measurers } = data;
  const counts = new Float64Array(subjects);
  const sums = new Float64Array(subjects);
  for (const { subject, count, mean } of cells) {
    counts[subject] = (counts[subject] ?? 0) + count;
    sums[subject] = (sums[subject] ?? 0) + count * mean;
  }
  const own = sums.map((sum, s) => sum / (counts[s] ?? 1));
  const effects = hasMeasurers ? measurerEffects(data, counts, own) : new Float64Array(measurers);
  // Means of the effects of those who read a subject.
  const shift = new Float64Array(subjects);
  for (const { subject, measurer, count } of cells) {
    shift[subject] = (shift[subject] ?? 0) + ((effects[measurer] ?? 0) * count) / (counts[subject] ?? 1);
  }
  return (
    data.squaresWithin +
    compensatedSum(
      cells.map(({ subject, measurer, count, mean }) => {
        const rest = mean - (own[subject] ?? 0) - ((effects[measurer] ?? 0) - (shift[subject] ?? 0));
        return count * rest ** 2;
      }),
    )
  );
}

function measurerEffects(data: RemlCells, counts: Float64Array, own: Float64Array): Float64Array {
  const { cells, measurers, partOf } = data;
  const bySubject = new Map<number, RemlCells["cells"][number][]>();
  const right = new Float64Array(measurers);
  // Effects of a part are free up to a constant: ones within each part hold their sum at 0.
  const normal = Matrix.zeros(measurers, measurers);
  for (let m = 0; m < measurers; m += 1) {
    for (let o = 0; o < measurers; o += 1) if (partOf[m] === partOf[o]) normal.set(m, o, 1);
  }
  for (const cell of cells) {
    const { subject, measurer, count, mean } = cell;
    bySubject.set(subject, [...(bySubject.get(subject) ?? []), cell]);
    normal.set(measurer, measurer, normal.get(measurer, measurer) + count);
    right[measurer] = (right[measurer] ?? 0) + count * (mean - (own[subject] ?? 0));
  }
  for (const [subject, group] of bySubject) {
    for (const one of group) {
      for (const other of group) {
        const shared = (one.count * other.count) / (counts[subject] ?? 1);
        normal.set(one.measurer, other.measurer, normal.get(one.measurer, other.measurer) - shared);
      }
    }
  }
  const solution = new CholeskyDecomposition(normal).solve(Matrix.columnVector(right));
  return Float64Array.from(solution.to1DArray());
}
