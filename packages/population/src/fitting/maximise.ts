import { Matrix, solve } from "ml-matrix";

/** Where a function has its maximum. */
export interface Maximum {
  readonly at: readonly number[];
  readonly value: number;
}

type Objective = (point: readonly number[]) => number;

const MOST_STEPS = 200;
/** Gains below this are rounding. */
const NOISE = 2e-15;
const GRADIENT_STEP = 1e-5;
const CURVATURE_STEP = 2e-4;

/**
 * The maximum of a smooth function near `start`, by Newton's method with derivatives from central differences
 * and damping after Levenberg and Marquardt, so that each step goes up. `scales` say by how much each
 * coordinate matters.
 */
export function maximise(f: Objective, start: readonly number[], scales: readonly number[]): Maximum {
  let at = [...start];
  let value = f(at);
  let damping = 1e-3;
  for (let step = 0; step < MOST_STEPS && Number.isFinite(value); step += 1) {
    const slope = gradient(
      f,
      at,
      scales.map((scale) => scale * GRADIENT_STEP),
    );
    const bend = hessian(
      f,
      at,
      scales.map((scale) => scale * CURVATURE_STEP),
    );
    if (![...slope, ...bend.flat()].every(Number.isFinite)) break;
    let gain = 0;
    for (; damping < 1e12; damping *= 10) {
      const move = dampedStep(slope, bend, scales, damping);
      const next = at.map((x, i) => x + (move[i] ?? 0));
      const reached = f(next);
      if (reached > value + NOISE * (1 + Math.abs(value))) {
        gain = reached - value;
        at = next;
        value = reached;
        damping = Math.max(damping / 30, 1e-12);
        break;
      }
    }
    if (gain <= 1e-14 * (1 + Math.abs(value))) break;
  }
  return { at, value };
}

/** Solves (−H + λ I) step = gradient in scaled coordinates. */
function dampedStep(
  slope: readonly number[],
  bend: readonly (readonly number[])[],
  scales: readonly number[],
  damping: number,
): number[] {
  const scale = (i: number): number => scales[i] ?? 1;
  const system = bend.map((row, i) =>
    row.map(
      (value, j) =>
        -value * scale(i) * scale(j) + (i === j ? damping * (1 + Math.abs(value) * scale(i) ** 2) : 0),
    ),
  );
  const right = Matrix.columnVector(slope.map((value, i) => value * scale(i)));
  try {
    return solve(new Matrix(system), right)
      .to1DArray()
      .map((value, i) => value * scale(i));
  } catch {
    // Singular: the caller damps more.
    return slope.map(() => 0);
  }
}

/** First derivatives by central differences. */
export function gradient(f: Objective, at: readonly number[], steps: readonly number[]): number[] {
  return at.map(
    (_, i) => (f(moved(at, steps, [[i, 1]])) - f(moved(at, steps, [[i, -1]]))) / (2 * (steps[i] ?? 1)),
  );
}

/** Second derivatives by central differences. */
export function hessian(f: Objective, at: readonly number[], steps: readonly number[]): number[][] {
  const centre = f(at);
  const size = at.length;
  const result = at.map(() => new Array<number>(size).fill(0));
  const put = (i: number, j: number, value: number): void => {
    const [first, second] = [result[i], result[j]];
    if (first !== undefined) first[j] = value;
    if (second !== undefined) second[i] = value;
  };
  const value = (shifts: readonly (readonly [number, number])[]): number => f(moved(at, steps, shifts));
  for (let i = 0; i < size; i += 1) {
    const area = (steps[i] ?? 1) ** 2;
    put(i, i, (value([[i, 1]]) - 2 * centre + value([[i, -1]])) / area);
    for (let j = 0; j < i; j += 1) {
      const alike =
        value([
          [i, 1],
          [j, 1],
        ]) +
        value([
          [i, -1],
          [j, -1],
        ]);
      const apart =
        value([
          [i, 1],
          [j, -1],
        ]) +
        value([
          [i, -1],
          [j, 1],
        ]);
      put(i, j, (alike - apart) / (4 * (steps[i] ?? 1) * (steps[j] ?? 1)));
    }
  }
  return result;
}

function moved(
  at: readonly number[],
  steps: readonly number[],
  shifts: readonly (readonly [place: number, by: number])[],
): number[] {
  const point = [...at];
  for (const [place, by] of shifts) point[place] = (point[place] ?? 0) + by * (steps[place] ?? 0);
  return point;
}
