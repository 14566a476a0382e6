import { InvalidArgumentError } from "@tapewise/outcome";

/** A mean and a covariance matrix that may be changed. */
export interface Gaussian {
  readonly mean: number[];
  readonly covariance: number[][];
}

type Matrix = readonly (readonly number[])[];

/** The part of its own variance below which a variable counts as determined by those before it. */
const DETERMINED = 1e-10;
/** How many standard deviations a known value may be off where it is determined already: rounding. */
const ROUNDING = 1e-6;

export function entry(matrix: Matrix, i: number, j: number): number {
  return matrix[i]?.[j] ?? 0;
}

export function diagonal(matrix: Matrix): number[] {
  return matrix.map((row, i) => row[i] ?? 0);
}

/** Rows and columns of a matrix, picked and put in order. */
export function pick(matrix: Matrix, places: readonly number[]): number[][] {
  return places.map((i) => places.map((j) => entry(matrix, i, j)));
}

/**
 * Learns that variable `place` has a value: mean and covariance of all become those given it. `scale` holds the
 * variances from before anything was learned. Returns the variance that was there to be learned about, or 0
 * where the value followed from what was known already.
 *
 * @throws {@link InvalidArgumentError} when it followed and differs.
 */
export function learn(
  { mean, covariance }: Gaussian,
  place: number,
  value: number,
  scale: readonly number[],
): number {
  const original = scale[place] ?? 0;
  const variance = entry(covariance, place, place);
  const surprise = value - (mean[place] ?? 0);
  if (variance <= DETERMINED * original) {
    if (Math.abs(surprise) <= ROUNDING * Math.sqrt(original)) return 0;
    throw new InvalidArgumentError("known", value, `${mean[place]}, which the other known values imply`);
  }
  const column = covariance.map((row) => row[place] ?? 0);
  for (let i = 0; i < mean.length; i += 1) {
    const slope = (column[i] ?? 0) / variance;
    mean[i] = (mean[i] ?? 0) + slope * surprise;
    const row = covariance[i] ?? [];
    for (let j = 0; j < row.length; j += 1)
      row[j] = (row[j] ?? 0) - (column[i] ?? 0) * ((column[j] ?? 0) / variance);
  }
  settle(covariance, scale);
  return variance;
}

/** Makes what is left of a determined variable an exact 0, and the matrix symmetric to the last bit. */
function settle(covariance: number[][], scale: readonly number[]): void {
  const gone = covariance.map((row, i) => (row[i] ?? 0) <= DETERMINED * (scale[i] ?? 0));
  for (let i = 0; i < covariance.length; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      const value = gone[i] || gone[j] ? 0 : (entry(covariance, i, j) + entry(covariance, j, i)) / 2;
      const [upper, lower] = [covariance[j], covariance[i]];
      if (upper !== undefined) upper[i] = value;
      if (lower !== undefined) lower[j] = value;
    }
  }
}

/**
 * The lower triangle L with L Lᵀ = the matrix (Cholesky), where a variable that those before it determine has
 * a zero on the diagonal. `undefined` when the matrix is no covariance matrix.
 */
export function factor(covariance: Matrix): number[][] | undefined {
  const lower: number[][] = covariance.map((row) => row.map(() => 0));
  for (let j = 0; j < covariance.length; j += 1) {
    const own = entry(covariance, j, j);
    const pivot = own - sumOfProducts(lower, j, j, j);
    if (!(own >= 0 && pivot >= -DETERMINED * own)) return undefined;
    const free = pivot > DETERMINED * own;
    for (let i = j; i < covariance.length; i += 1) {
      const rest = entry(covariance, i, j) - sumOfProducts(lower, i, j, j);
      const row = lower[i] ?? [];
      if (free) row[j] = rest / Math.sqrt(pivot);
      // Nothing may be left over of a variable that has no spread of its own.
      else if (Math.abs(rest) > 1e-5 * Math.sqrt(own * entry(covariance, i, i))) return undefined;
    }
  }
  return lower;
}

/** The x with L Lᵀ x = the right-hand side, where L has no zero on its diagonal: forwards, then backwards. */
export function solveFactored(lower: Matrix, rightHandSide: readonly number[]): number[] {
  const x = [...rightHandSide];
  for (let i = 0; i < x.length; i += 1) {
    let rest = x[i] ?? 0;
    for (let k = 0; k < i; k += 1) rest -= entry(lower, i, k) * (x[k] ?? 0);
    x[i] = rest / entry(lower, i, i);
  }
  for (let i = x.length - 1; i >= 0; i -= 1) {
    let rest = x[i] ?? 0;
    for (let k = i + 1; k < x.length; k += 1) rest -= entry(lower, k, i) * (x[k] ?? 0);
    x[i] = rest / entry(lower, i, i);
  }
  return x;
}

function sumOfProducts(lower: Matrix, i: number, j: number, count: number): number {
  let sum = 0;
  for (let k = 0; k < count; k += 1) sum += entry(lower, i, k) * entry(lower, j, k);
  return sum;
}
