import { Matrix, solve } from "ml-matrix";
import type { RemlCells } from "./reml-cells.ts";
import { type RemlValue, remlCriterion, type VarianceRatios } from "./reml-criterion.ts";

/** Which variances are looked for besides the residual one; the others are 0. */
export type FreeRatios = readonly [subject: boolean, measurer: boolean, interaction: boolean];

/** The best ratios, and what the data say of them. */
export interface RemlFit extends RemlValue {
  readonly ratios: VarianceRatios;
  readonly steps: number;
}

const MOST_STEPS = 100;
/** Slopes of the criterion below this are rounding: the criterion itself is in units of about 1. */
const FLAT = 1e-9;
/** ln(1 + cλ) beyond this stands for no residual at all. */
const LARGEST = 46;

/**
 * The ratios with the greatest restricted likelihood, none below 0.
 *
 * Newton's method on x = ln(1 + c λ), c the readings for each level: in x the criterion bends much alike from a
 * ratio of 0 to the largest, and 0 is a plain bound. Variances at 0 whose slope points outwards are held there, and
 * let go when it turns (active set); curvature by differences of the exact slope; steps damped after Levenberg and
 * Marquardt until they lead down. From three starts, since two variances can leave more than one low.
 */
export function fitReml(data: RemlCells, free: FreeRatios): RemlFit {
  const scales = [data.subjects, data.measurers, data.cells.length].map((levels) => data.readings / levels);
  const starts = [
    [1, 1, 0.5],
    [3, 0, 0],
    [0.05, 3, 0.05],
  ];
  let best: RemlFit | undefined;
  for (const start of starts) {
    const fit = descend(
      data,
      scales,
      start.map((x, i) => (free[i] ? x : 0)),
      free,
    );
    if (best === undefined || fit.criterion < best.criterion - 1e-10 * Math.abs(best.criterion)) best = fit;
  }
  return best as RemlFit;
}

interface Point {
  readonly x: readonly number[];
  readonly value: RemlValue;
  /** Slope in x. */
  readonly slope: readonly number[];
}

function descend(
  data: RemlCells,
  scales: readonly number[],
  start: readonly number[],
  free: FreeRatios,
): RemlFit {
  const pointAt = (x: readonly number[]): Point => {
    const value = remlCriterion(data, ratiosOf(x, scales));
    return { x, value, slope: x.map((xi, i) => (value.slope[i] ?? 0) * (Math.exp(xi) / (scales[i] ?? 1))) };
  };
  let here = pointAt(start);
  let damping = 1e-3;
  let steps = 0;
  for (; steps < MOST_STEPS; steps += 1) {
    const { x, slope } = here;
    const moving = [0, 1, 2].filter((i) => free[i] && ((x[i] ?? 0) > 0 || (slope[i] ?? 0) < 0));
    if (moving.every((i) => Math.abs(slope[i] ?? 0) < FLAT)) break;
    const bend = curvature(here, moving, pointAt);
    let next: Point | undefined;
    for (; damping < 1e12; damping *= 8) {
      const move = dampedStep(moving, slope, bend, damping);
      const trial = pointAt(x.map((xi, i) => Math.min(Math.max(xi + (move.get(i) ?? 0), 0), LARGEST)));
      if (isBetter(trial, here, free)) {
        next = trial;
        break;
      }
    }
    if (next === undefined) break;
    here = next;
    damping = Math.max(damping / 16, 1e-9);
  }
  return { ...here.value, ratios: ratiosOf(here.x, scales), steps };
}

function ratiosOf(x: readonly number[], scales: readonly number[]): VarianceRatios {
  const ratio = (i: number): number => Math.expm1(x[i] ?? 0) / (scales[i] ?? 1);
  return [ratio(0), ratio(1), ratio(2)];
}

/** Lower, or, where the criterion is down to rounding, flatter. */
function isBetter(trial: Point, here: Point, free: FreeRatios): boolean {
  const gain = here.value.criterion - trial.value.criterion;
  const noise = 1e-13 * (1 + Math.abs(here.value.criterion));
  if (!Number.isFinite(trial.value.criterion) || gain < -noise) return false;
  return gain > noise || steepness(trial, free) < steepness(here, free);
}

/** Length of the slope, without what points out of the bound. */
function steepness({ x, slope }: Point, free: FreeRatios): number {
  return Math.hypot(...slope.map((value, i) => (free[i] && ((x[i] ?? 0) > 0 || value < 0) ? value : 0)));
}

/** Second derivatives in the moving coordinates, from differences of the slope. */
function curvature(
  here: Point,
  moving: readonly number[],
  pointAt: (x: readonly number[]) => Point,
): number[][] {
  const columns = moving.map((i) => {
    const xi = here.x[i] ?? 0;
    const step = 1e-4 * (1 + xi);
    const moved = (to: number): readonly number[] => pointAt(here.x.map((x, j) => (j === i ? to : x))).slope;
    // Close to the bound the difference is taken on one side.
    const low = xi > step ? xi - step : xi;
    const below = low === xi ? here.slope : moved(low);
    const above = moved(xi + step);
    return moving.map((j) => ((above[j] ?? 0) - (below[j] ?? 0)) / (xi + step - low));
  });
  return moving.map((_, i) => moving.map((_, j) => ((columns[i]?.[j] ?? 0) + (columns[j]?.[i] ?? 0)) / 2));
}

/** Solves (H + λ diag(1 + |H|)) step = −slope; a diagonal that bends the wrong way is turned round. */
function dampedStep(
  moving: readonly number[],
  slope: readonly number[],
  bend: readonly (readonly number[])[],
  damping: number,
): ReadonlyMap<number, number> {
  const system = bend.map((row, i) =>
    row.map((value, j) =>
      i === j ? (value > 0 ? value : Math.abs(value) + 0.1) + damping * (1 + Math.abs(value)) : value,
    ),
  );
  const down = moving.map((i) => -(slope[i] ?? 0));
  let move: readonly number[];
  try {
    move = solve(new Matrix(system), Matrix.columnVector(down)).to1DArray();
  } catch {
    move = down;
  }
  // Far steps leave the region that the curvature speaks of.
  const longest = Math.max(...move.map(Math.abs));
  const shrink = longest > 4 ? 4 / longest : 1;
  return new Map(moving.map((i, place) => [i, (move[place] ?? 0) * shrink]));
}
