/** Logarithms of the smallest and the largest positive double. */
const LOWEST = -744.4400719213812;
const HIGHEST = 709.782712893384;

/** A probability that rises, or falls, with x > 0. */
export interface LogProblem {
  readonly rising: boolean;
  readonly probability: (x: number) => number;
  /** How fast it changes with ln x, as a number that is not negative: the density times x. */
  readonly slope: (x: number) => number;
}

/**
 * The x > 0 where a probability reaches `target`, by Newton's method for ln probability in ln x, from the
 * start ln x = `start`. 0 or `Infinity` when x is too small or too large for a double.
 *
 * Every distribution here has a log-concave density of ln x, so ln probability is concave in ln x: after
 * its first step Newton's method comes to the root from one side and cannot run away. Where a start lies
 * so far out that the probability underflows, halving the bracket leads back.
 */
export function solveInLogs(problem: LogProblem, target: number, start: number): number {
  let low = LOWEST;
  let high = HIGHEST;
  let position = Math.min(Math.max(start, low), high);
  while (high - low > 1e-12) {
    const x = Math.exp(position);
    const value = problem.probability(x);
    if (value === target) return x;
    if (value < target === problem.rising) low = position;
    else high = position;
    const change = ((problem.rising ? 1 : -1) * Math.log(target / value) * value) / problem.slope(x);
    // Newton's error is about the square of its last step: the next one would change nothing.
    if (Math.abs(change) < 1e-9) return x * Math.exp(change);
    const next = position + change;
    position = next > low && next < high ? next : (low + high) / 2;
  }
  if (high === HIGHEST) return Number.POSITIVE_INFINITY;
  return low === LOWEST ? 0 : Math.exp(position);
}
