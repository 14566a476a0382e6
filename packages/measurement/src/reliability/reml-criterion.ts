import { CholeskyDecomposition, Matrix } from "ml-matrix";
import { add, at, contrasts, form, raise, sumOfSquares } from "./reml-algebra.ts";
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

/** Rounds of solving for the effects: the first and two to take up what rounding left. */
const REFINEMENTS = 3;

/**
 * The profiled restricted likelihood of mean + subject + measurer + subject × measurer + error, all independent
 * and normal (H. D. Patterson & R. Thompson, 1971, Biometrika 58, 545–554; the profile as in D. Bates et al., 2015,
 * Journal of Statistical Software 67(1), 3.4) and its slope, tr(P Vᵢ) − (N − 1) y′P Vᵢ P y / y′P y.
 *
 * Works on cell means with weights w = n / (1 + n λ). Subjects are eliminated one by one: each only meets its own
 * cells; measurers and mean remain as a small dense system. Of the measurers only contrasts are in it, since the sum of
 * their effects is one with the mean, and the restricted likelihood does not see it. All is written so that neither a
 * ratio of 0 nor a large one costs digits.
 */
export function remlCriterion(data: RemlCells, ratios: VarianceRatios): RemlValue {
  const [ofSubject, ofMeasurer, ofCell] = ratios;
  const { cells, subjects, measurers } = data;
  const root = Math.sqrt(ofMeasurer);
  const freedom = data.readings - 1;

  // Each subject: its weight, and the weight it has with each measurer.
  const weights = cells.map(({ count }) => count / (1 + count * ofCell));
  const whole = new Float64Array(subjects);
  const shares = new Float64Array(subjects * measurers);
  let logs = 0;
  cells.forEach(({ subject, measurer, count }, i) => {
    const weight = weights[i] ?? 0;
    add(whole, subject, weight);
    add(shares, subject * measurers + measurer, weight);
    logs += Math.log1p(count * ofCell);
  });
  const damping = whole.map((weight) => 1 / (1 + ofSubject * weight));
  for (let s = 0; s < subjects; s += 1) logs += Math.log1p(ofSubject * at(whole, s));

  // W′D⁻¹W with W the columns of the measurers and of the mean; U = W P and the system T + U′D⁻¹U.
  const plain = Matrix.zeros(measurers + 1, measurers + 1);
  for (let s = 0; s < subjects; s += 1) {
    const pull = ofSubject * at(damping, s);
    const first = s * measurers;
    for (let m = 0; m < measurers; m += 1) {
      const own = at(shares, first + m);
      if (own === 0) continue;
      raise(plain, m, m, own);
      for (let o = 0; o < measurers; o += 1) raise(plain, m, o, -pull * (own * at(shares, first + o)));
      raise(plain, m, measurers, at(damping, s) * own);
      raise(plain, measurers, m, at(damping, s) * own);
    }
    raise(plain, measurers, measurers, at(damping, s) * at(whole, s));
  }
  const basis = contrasts(measurers, root);
  const system = basis.transpose().mmul(plain).mmul(basis);
  for (let i = 0; i < measurers; i += 1) {
    for (let j = 0; j < i; j += 1) system.set(j, i, system.get(i, j));
    if (i < measurers - 1) raise(system, i, i, 1);
  }
  const cholesky = new CholeskyDecomposition(system);
  const inverse = basis.mmul(cholesky.solve(basis.transpose()));
  for (let i = 0; i < measurers; i += 1) logs += 2 * Math.log(cholesky.lowerTriangularMatrix.get(i, i));

  // Effects of measurers and mean; what the first solution leaves over goes into the second, and so on, since a mean of
  // subjects who differ much would otherwise cost digits.
  const solution = Matrix.zeros(measurers, 1);
  let effectOf = basis.mmul(solution);
  let rest = cells.map((cell) => cell.mean);
  for (let round = 0; round < REFINEMENTS; round += 1) {
    const right = basis.transpose().mmul(Matrix.columnVector(projectRest()));
    for (let i = 0; i < measurers - 1; i += 1) raise(right, i, 0, -solution.get(i, 0));
    solution.add(cholesky.solve(right));
    effectOf = basis.mmul(solution);
    rest = cells.map((cell) => cell.mean - effectOf.get(measurers, 0) - effectOf.get(cell.measurer, 0));
  }

  // Residuals, and with them y′P y as a sum of squares that cannot cancel.
  const mean = effectOf.get(measurers, 0);
  const tops = new Float64Array(subjects);
  cells.forEach(({ subject }, i) => {
    add(tops, subject, (weights[i] ?? 0) * (rest[i] ?? 0));
  });
  const effects = tops.map((top, s) => ofSubject * at(damping, s) * top);
  let quadratic = data.squaresWithin;
  for (let i = 0; i < measurers - 1; i += 1) quadratic += solution.get(i, 0) ** 2;
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
    meanError: Math.sqrt((inverse.get(measurers, measurers) + ofMeasurer / measurers) * residualVariance),
  };

  /** W′D⁻¹ times what is left of the cell means. */
  function projectRest(): Float64Array {
    const right = new Float64Array(measurers + 1);
    const sums = new Float64Array(subjects);
    cells.forEach(({ subject }, i) => {
      add(sums, subject, (weights[i] ?? 0) * (rest[i] ?? 0));
    });
    cells.forEach(({ subject, measurer }, i) => {
      const own = at(sums, subject) / at(whole, subject);
      const apart = (rest[i] ?? 0) - own + own * at(damping, subject);
      add(right, measurer, (weights[i] ?? 0) * apart);
    });
    for (let s = 0; s < subjects; s += 1) add(right, measurers, at(damping, s) * at(sums, s));
    return right;
  }

  /** tr(Z′P Z) of subjects, measurers and cells. */
  function findTraces(): VarianceRatios {
    let subjectTrace = 0;
    let cellTrace = 0;
    const column = new Float64Array(measurers + 1);
    for (let s = 0; s < subjects; s += 1) {
      const damped = at(damping, s);
      for (let m = 0; m < measurers; m += 1) column[m] = damped * at(shares, s * measurers + m);
      column[measurers] = damped * at(whole, s);
      subjectTrace += damped * at(whole, s) - form(inverse, column);
    }
    cells.forEach(({ subject, measurer }, i) => {
      const weight = weights[i] ?? 0;
      const pull = ofSubject * at(damping, subject);
      for (let m = 0; m < measurers; m += 1) {
        column[m] = weight * ((m === measurer ? 1 : 0) - pull * at(shares, subject * measurers + m));
      }
      column[measurers] = weight * at(damping, subject);
      cellTrace += weight * (1 - pull * weight) - form(inverse, column);
    });
    let measurerTrace = 0;
    for (let m = 0; m < measurers; m += 1) {
      for (let i = 0; i <= measurers; i += 1) column[i] = plain.get(m, i);
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
