import { Matrix } from "ml-matrix";

/** P: orthonormal contrasts of the measurers after F. R. Helmert (1876), times √λ, and the mean. */
export function contrasts(measurers: number, root: number): Matrix {
  const basis = Matrix.zeros(measurers + 1, measurers);
  for (let j = 1; j < measurers; j += 1) {
    const length = root / Math.sqrt(j * (j + 1));
    for (let m = 0; m < j; m += 1) basis.set(m, j - 1, length);
    basis.set(j, j - 1, -j * length);
  }
  basis.set(measurers, measurers - 1, 1);
  return basis;
}

/** The value at a position, which the caller keeps within the list. */
export function at(values: Float64Array, index: number): number {
  return values[index] ?? 0;
}

/** Adds to the value at a position. */
export function add(values: Float64Array, index: number, by: number): void {
  values[index] = at(values, index) + by;
}

/** Adds to an entry of a matrix. */
export function raise(matrix: Matrix, row: number, column: number, by: number): void {
  matrix.set(row, column, matrix.get(row, column) + by);
}

/** v′v */
export function sumOfSquares(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

/** v′M v */
export function form(matrix: Matrix, vector: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < vector.length; i += 1) {
    const left = at(vector, i);
    if (left === 0) continue;
    for (let j = 0; j < vector.length; j += 1) sum += left * matrix.get(i, j) * at(vector, j);
  }
  return sum;
}
