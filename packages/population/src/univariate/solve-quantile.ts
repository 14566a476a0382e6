import type { Distribution } from "./distribution.ts";

/** A distribution function to be inverted, and where to begin. */
export interface QuantileProblem extends Pick<Distribution, "cumulative" | "upperTail" | "density"> {
  /** Between which values all of the distribution lies; may be infinite. */
  readonly from: number;
  readonly to: number;
  readonly start: number;
  /** About one standard deviation. */
  readonly step: number;
}

const MOST_STEPS = 400;

/**
 * The x at which a distribution function reaches `p`: Newton's method for the logarithm of the smaller tail,
 * inside a bracket that only ever shrinks, so that it ends wherever it starts. Where the function jumps
 * over `p`, the place of the jump.
 */
export function solveQuantile(problem: QuantileProblem, p: number): number {
  if (p === 0) return problem.from;
  if (p === 1) return problem.to;
  const lower = p <= 0.5;
  const target = Math.log(lower ? p : 1 - p);
  /** Below zero left of the root, above zero right of it. */
  const excess = (x: number): number => {
    const tail = lower ? problem.cumulative(x) : problem.upperTail(x);
    return lower ? Math.log(tail) - target : target - Math.log(tail);
  };
  const slope = (x: number): number =>
    problem.density(x) / (lower ? problem.cumulative(x) : problem.upperTail(x));

  let [low, high] = bracket(problem, excess);
  let x = Math.min(Math.max(problem.start, low), high);
  for (let count = 0; count < MOST_STEPS; count += 1) {
    const value = excess(x);
    if (value === 0) return x;
    if (value < 0) low = x;
    else high = x;
    const next = x - value / slope(x);
    const inside = next > low && next < high;
    // Every third step halves the bracket, so that a curve that misleads Newton cannot hold it up.
    const chosen = inside && count % 3 !== 2 ? next : low + (high - low) / 2;
    if (!(chosen > low && chosen < high)) return value < 0 ? high : x;
    // At a jump the steps get short too, but nothing is nearly reached.
    const isReached = Math.abs(value) < 1e-9 && Math.abs(chosen - x) <= Number.EPSILON * Math.abs(x);
    if (isReached) return chosen;
    x = chosen;
  }
  return x;
}

/** Two places with the root between them, found by going out in steps that double. */
function bracket(problem: QuantileProblem, excess: (x: number) => number): [number, number] {
  const start = Math.min(Math.max(problem.start, problem.from), problem.to);
  let low = start;
  for (let step = problem.step; low > problem.from && excess(low) >= 0; step *= 2) {
    low = Math.max(low - step, problem.from);
  }
  let high = start;
  for (let step = problem.step; high < problem.to && excess(high) < 0; step *= 2) {
    high = Math.min(high + step, problem.to);
  }
  return [low, high];
}
