import { studentTUpperTail } from "@tapewise/statistics";
import { FARTHEST } from "./normal-table.ts";

/** Fewer degrees of freedom than this are left to the functions that the table is made with. */
export const FEWEST_DEGREES = 7.5;

const CELLS_PER_UNIT = 8;
const CELLS = FARTHEST * CELLS_PER_UNIT;
/** Slices of 1/ν, from none to 1/{@link FEWEST_DEGREES}. */
const SLICES = 4;
const SLICE = 1 / FEWEST_DEGREES / SLICES;
/** Terms in the score and in 1/ν. */
const TERMS = 8;
const ORDERS = 7;
const STRIDE = TERMS * ORDERS;

let table: Float64Array | undefined;

/**
 * The upper tail of Student's t as a polynomial in two variables, cell by cell: the score y = λv with
 * v² = ν ln(1 + t²/ν) and λ² = 1 − 1/(2ν), in which the distribution is all but normal (D. L. Wallace 1959, "Bounds on
 * normal approximations to Student's and the chi-square distributions"), and 1/ν. Interpolated at the points of
 * Chebyshev; its error is below 10⁻¹³.
 */
export function studentTable(): Float64Array {
  if (table !== undefined) return table;
  const made = new Float64Array(CELLS * SLICES * STRIDE);
  const [scores, degrees] = [chebyshevPoints(TERMS), chebyshevPoints(ORDERS)];
  const [byScore, byDegree] = [monomialsFrom(TERMS), monomialsFrom(ORDERS)];
  const tails = new Float64Array(STRIDE);
  const partly = new Float64Array(STRIDE);
  for (let start = 0, slice = 0; slice < SLICES; slice += 1) {
    for (let cell = 0; cell < CELLS; cell += 1, start += STRIDE) {
      for (let a = 0; a < TERMS; a += 1) {
        for (let b = 0; b < ORDERS; b += 1) {
          const score = (cell + 0.5 + (scores[a] ?? 0) / 2) / CELLS_PER_UNIT;
          tails[a * ORDERS + b] = tailAt(score, (slice + 0.5 + (degrees[b] ?? 0) / 2) * SLICE);
        }
      }
      // One variable after the other: the interpolation of a product grid is a product.
      for (let a = 0; a < TERMS; a += 1) transform(byDegree, tails, a * ORDERS, 1, partly, a * ORDERS, 1);
      for (let j = 0; j < ORDERS; j += 1) transform(byScore, partly, j, ORDERS, made, start + j, ORDERS);
    }
  }
  table = made;
  return made;
}

/** A matrix times every `step`-th number from `at` on. */
function transform(
  matrix: Matrix,
  from: Float64Array,
  at: number,
  step: number,
  to: Float64Array,
  target: number,
  stride: number,
): void {
  matrix.forEach((row, i) => {
    let sum = 0;
    for (let k = 0; k < row.length; k += 1) sum += (row[k] as number) * (from[at + k * step] as number);
    to[target + i * stride] = sum;
  });
}

type Matrix = readonly (readonly number[])[];

function tailAt(score: number, inverse: number): number {
  const degrees = 1 / inverse;
  const square = (score * score) / (1 - inverse / 2);
  return studentTUpperTail(Math.sqrt(degrees * Math.expm1(square * inverse)), degrees);
}

function chebyshevPoints(count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => Math.cos((Math.PI * (i + 0.5)) / count));
}

/** Row i holds what the coefficient of xⁱ takes of the values at the points. */
function monomialsFrom(count: number): Matrix {
  const points = chebyshevPoints(count);
  // The coefficients of the Chebyshev polynomials by their recurrence.
  const polynomials: number[][] = [[1], [0, 1]];
  for (let n = 2; n < count; n += 1) {
    const [last = [], before = []] = [polynomials[n - 1], polynomials[n - 2]];
    polynomials.push(Array.from({ length: n + 1 }, (_, i) => 2 * (last[i - 1] ?? 0) - (before[i] ?? 0)));
  }
  return points.map((_, power) =>
    points.map((__, at) =>
      polynomials.slice(0, count).reduce((sum, polynomial, n) => {
        const weight = (n === 0 ? 1 : 2) / count;
        return sum + weight * (polynomial[power] ?? 0) * Math.cos((n * Math.PI * (at + 0.5)) / count);
      }, 0),
    ),
  );
}

/**
 * P(T > t) into `out[0]` and the density into `out[1]`, for t ≥ 0 and {@link FEWEST_DEGREES} or more, not
 * infinite. Beyond the table both are 0.
 *
 * @param height - the density at 0
 */
export function readStudent(
  cells: Float64Array,
  t: number,
  degrees: number,
  height: number,
  out: Float64Array,
): void {
  const ratio = (t * t) / degrees;
  const square = degrees * Math.log1p(ratio);
  const y = Math.sqrt((1 - 0.5 / degrees) * square);
  if (!(y < FARTHEST)) {
    out[0] = 0;
    out[1] = 0;
    return;
  }
  const cell = (y * CELLS_PER_UNIT) | 0;
  const inverse = 1 / degrees / SLICE;
  const slice = Math.min(SLICES - 1, inverse | 0);
  const x = 2 * (y * CELLS_PER_UNIT - cell) - 1;
  const w = 2 * (inverse - slice) - 1;
  let at = (slice * CELLS + cell) * STRIDE + STRIDE - ORDERS;
  let tail = 0;
  for (let i = 0; i < TERMS; i += 1) {
    let coefficient = cells[at + 6] as number;
    coefficient = (cells[at + 5] as number) + w * coefficient;
    coefficient = (cells[at + 4] as number) + w * coefficient;
    coefficient = (cells[at + 3] as number) + w * coefficient;
    coefficient = (cells[at + 2] as number) + w * coefficient;
    coefficient = (cells[at + 1] as number) + w * coefficient;
    coefficient = (cells[at] as number) + w * coefficient;
    tail = tail * x + coefficient;
    at -= ORDERS;
  }
  out[0] = tail;
  // (1 + t²/ν)^(−(ν+1)/2)
  out[1] = (height * Math.exp(-0.5 * square)) / Math.sqrt(1 + ratio);
}
