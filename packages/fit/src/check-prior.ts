import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";

/** How far two mirrored covariances may differ by rounding, as a part of the largest possible one. */
const ROUNDING = 1e-9;

/** Refuses a prior that is no joint normal distribution of its dimensions. */
export function checkPrior(prior: Prior): void {
  const { dimensions, meanMm, covarianceMm2 } = prior;
  const size = dimensions.length;
  if (new Set(dimensions).size !== size) {
    throw new InvalidArgumentError("prior.dimensions", dimensions.join(", "), "different dimensions");
  }
  if (meanMm.length !== size || !meanMm.every(Number.isFinite)) {
    throw new InvalidArgumentError("prior.meanMm", meanMm, "a finite mean for each dimension");
  }
  const isSquare = covarianceMm2.length === size && covarianceMm2.every((row) => row.length === size);
  if (!isSquare || !covarianceMm2.flat().every(Number.isFinite)) {
    throw new InvalidArgumentError("prior.covarianceMm2", covarianceMm2, "a row of numbers a dimension");
  }
  if (!(isSymmetric(covarianceMm2) && isPositiveDefinite(covarianceMm2))) {
    throw new InvalidArgumentError(
      "prior.covarianceMm2",
      covarianceMm2,
      "a symmetric positive-definite matrix",
    );
  }
}

type Matrix = readonly (readonly number[])[];

function entry(matrix: Matrix, i: number, j: number): number {
  return matrix[i]?.[j] ?? 0;
}

function isSymmetric(matrix: Matrix): boolean {
  return matrix.every((row, i) =>
    row.every((value, j) => {
      const bound = Math.sqrt(Math.abs(entry(matrix, i, i) * entry(matrix, j, j)));
      return Math.abs(value - entry(matrix, j, i)) <= ROUNDING * bound;
    }),
  );
}

/** Whether every variance is above 0 and stays so once the dimensions before it are known (Cholesky). */
function isPositiveDefinite(matrix: Matrix): boolean {
  const lower: number[][] = [];
  for (let i = 0; i < matrix.length; i += 1) {
    const row: number[] = [];
    let left = entry(matrix, i, i);
    for (let j = 0; j < i; j += 1) {
      const known = row.reduce((sum, value, k) => sum + value * entry(lower, j, k), 0);
      const value = (entry(matrix, i, j) - known) / entry(lower, j, j);
      row.push(value);
      left -= value * value;
    }
    if (!(left > 0)) return false;
    lower.push([...row, Math.sqrt(left)]);
  }
  return true;
}
