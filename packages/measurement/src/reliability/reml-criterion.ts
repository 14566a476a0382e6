import { CholeskyDecomposition, Matrix } from "ml-matrix";
import type { RemlCells } from "./reml-cells.ts";

/** Variances over the residual variance: of subjects, measurers, subject × measurer. Each from 0 up. */
export type VarianceRatios = readonly [subject: number, measurer: number, interaction: number];

/** What the data say of given ratios. */
export interface RemlValue {
  /** −2 × the restricted log likelihood, at the best mean and residual variance for these ratios. */
  readonly criterion: number;
  /** Its slope in each ratio. */
  readonly slope: VarianceRatios;
  readonly residualVariance: number;
  /** Estimate of the mean, less the centre of the cells, and its standard error. */
  readonly mean: number;
  readonly meanError: number;
}

/**
 * The profiled restricted likelihood of mean + subject + measurer + subject × measurer + error, all independent
 * and normal (H. D. Patterson & R. Thompson, 1971, Biometrika 58, 545–554; the profile as in D. Bates et al., 2015,
 * Journal of Statistical Software 67(1), 3.4) and its slope, tr(P Vᵢ) − (N − 1) y′P Vᵢ P y / y′P y.
 *
 * Works on cell means with weights w = n / (1 + n λ). Subjects are eliminated one by one: each only meets its own
 * cells; measurers and mean remain as a small dense system. All is written so that neither a ratio of 0 nor a
 * large one costs digits.
 */
export function remlCriterion(data: RemlCells, ratios: VarianceRatios): RemlValue {
  const [ofSubject, ofMeasurer, ofCell] = ratios;
  const { cells, subjects, measurers } = data;
  const size = measurers + 1;
  const root = Math.sqrt(ofMeasurer);
  const freedom = data.readings - 1;

  // Each subject: its weight, the weight it has with each measurer, its weighted mean.
  const weights = cells.map(({ count }) => count / (1 + count * ofCell));
  const whole = new Float64Array(subjects);
  const shares = new Float64Array(subjects * measurers);
  const sums = new Float64Array(subjects);
  let logs = 0;
  cells.forEach(({ subject, measurer, count, mean }, i) => {
    const weight = weights[i] ?? 0;
    add(whole, subject, weight);
    add(shares, subject * measurers + measurer, weight);
    add(sums, subject, weight * mean);
    logs += Math.log1p(count * ofCell);
  });
  const damping = whole.map((weight) => 1 / (1 + ofSubject * weight));
  for (let s = 0; s < subjects; s += 1) logs += Math.log1p(ofSubject * at(whole, s));

  // T + U′D⁻¹U and U′D⁻¹y, with U the columns of the measurers (times √λ) and of the mean.
  const system = Matrix.zeros(size, size);
  const plain = Matrix.zeros(measurers, size);
  const right = new Float64Array(size);
  for (let s = 0; s < subjects; s += 1) {
    const pull = ofSubject * at(damping, s);
    const first = s * measurers;
    for (let m = 0; m < measurers; m += 1) {
      const own = at(shares, first + m);
      if (own === 0) continue;
      raise(plain, m, m, root * own);
      for (let o = 0; o < measurers; o += 1) raise(plain, m, o, -root * pull * (own * at(shares, first + o)));
      raise(plain, m, measurers, at(damping, s) * own);
    }
    raise(system, measurers, measurers, at(damping, s) * at(whole, s));
    add(right, measurers, at(damping, s) * at(sums, s));
  }
  for (let m = 0; m < measurers; m += 1) {
    for (let o = 0; o < measurers; o += 1) raise(system, m, o, root * plain.get(m, o) + (m === o ? 1 : 0));
    system.set(m, measurers, root * plain.get(m, measurers));
    system.set(measurers, m, root * plain.get(m, measurers));
  }
  cells.forEach(({ subject, measurer, mean }, i) => {
    const own = at(sums, subject) / at(whole, subject);
    add(right, measurer, root * (weights[i] ?? 0) * (mean - own + own * at(damping, subject)));
  });
  const cholesky = new CholeskyDecomposition(system);
  const inverse = cholesky.solve(Matrix.eye(size));
  const solution = inverse.mmul(Matrix.columnVector(right)).to1DArray();
  for (let i = 0; i < size; i += 1) logs += 2 * Math.log(cholesky.lowerTriangularMatrix.get(i, i));

  // Residuals, and with them y′P y as a sum of squares that cannot cancel.
  const mean = solution[measurers] ?? 0;
  const rest = cells.map((cell) => cell.mean - mean - root * (solution[cell.measurer] ?? 0));
  const tops = new Float64Array(subjects);
  cells.forEach(({ subject }, i) => {
    add(tops, subject, (weights[i] ?? 0) * (rest[i] ?? 0));
  });
  const effects = tops.map((top, s) => ofSubject * at(damping, s) * top);
  let quadratic = data.squaresWithin;
  for (let m = 0; m < measurers; m += 1) quadratic += (solution[m] ?? 0) ** 2;
  if (ofSubject > 0) for (const effect of effects) quadratic += effect ** 2 / ofSubject;
  const bySubject = new Float64Array(subjects);
  const byMeasurer = new Float64Array(measurers);
  let byCell = 0;
  cells.forEach(({ subject, measurer }, i) => {
    const error = (rest[i] ?? 0) - at(effects, subject);
    const projected = (weights[i] ?? 0) * error;
    quadratic += projected * error;
    add(bySubject, subject, projected);
    add(byMeasurer, measurer, projected);
    byCell += projected ** 2;
  });

  const traces = findTraces();
  const quadratics: VarianceRatios = [sumOfSquares(bySubject), sumOfSquares(byMeasurer), byCell];
  const slope = (i: 0 | 1 | 2): number => traces[i] - (freedom * quadratics[i]) / quadratic;
  const residualVariance = quadratic / freedom;
  return {
    criterion: logs + freedom * (1 + Math.log(2 * Math.PI * residualVariance)),
    slope: [slope(0), slope(1), slope(2)],
    residualVariance,
    mean,
    meanError: Math.sqrt(inverse.get(measurers, measurers) * residualVariance),
  };

  /** tr(Z′P Z) of subjects, measurers and cells. */
  function findTraces(): VarianceRatios {
    let subjectTrace = 0;
    let cellTrace = 0;
    const column = new Float64Array(size);
    for (let s = 0; s < subjects; s += 1) {
      const damped = at(damping, s);
      for (let m = 0; m < measurers; m += 1) column[m] = root * damped * at(shares, s * measurers + m);
      column[measurers] = damped * at(whole, s);
      subjectTrace += damped * at(whole, s) - form(inverse, column);
    }
    cells.forEach(({ subject, measurer }, i) => {
      const weight = weights[i] ?? 0;
      const pull = ofSubject * at(damping, subject);
      for (let m = 0; m < measurers; m += 1) {
        column[m] = root * weight * ((m === measurer ? 1 : 0) - pull * at(shares, subject * measurers + m));
      }
      column[measurers] = weight * at(damping, subject);
      cellTrace += weight * (1 - pull * weight) - form(inverse, column);
    });
    let measurerTrace = 0;
    for (let m = 0; m < measurers; m += 1) {
      for (let i = 0; i < size; i += 1) column[i] = plain.get(m, i);
      measurerTrace -= form(inverse, column);
    }
    for (let s = 0; s < subjects; s += 1) {
      for (let m = 0; m < measurers; m += 1) {
        const own = at(shares, s * measurers + m);
        measurerTrace += own * (1 - ofSubject * at(damping, s) * own);
      }
    }
    return [subjectTrace, measurerTrace, cellTrace];
  }
}

function at(values: Float64Array, index: number): number {
  return values[index] ?? 0;
}

function add(values: Float64Array, index: number, by: number): void {
  values[index] = at(values, index) + by;
}

function raise(matrix: Matrix, row: number, column: number, by: number): void {
  matrix.set(row, column, matrix.get(row, column) + by);
}

function sumOfSquares(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

/** v′M v */
function form(matrix: Matrix, vector: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < vector.length; i += 1) {
    const left = at(vector, i);
    if (left === 0) continue;
    for (let j = 0; j < vector.length; j += 1) sum += left * matrix.get(i, j) * at(vector, j);
  }
  return sum;
}
