import { entry } from "../joint/gaussian.ts";
import { truncatedMoments } from "../univariate/truncated-moments.ts";
import type { Bounds } from "./bounds.ts";

/** Bounds in the order in which they are best integrated, and the factor of the correlations in that order. */
export interface OrderedBounds {
  readonly lower: readonly number[];
  readonly upper: readonly number[];
  readonly factor: readonly (readonly number[])[];
}

const DETERMINED = 1e-10;

/**
 * Puts the variable with the narrowest bounds first, given that those before it have their expected values,
 * and factors the correlations on the way (G. J. Gibson, C. A. Glasbey & D. A. Elston, 1994, Monte Carlo
 * evaluation of multivariate normal integrals). The answer is the same in any order; its error is not. A variable
 * after which another is determined comes as late as can be: the last two are taken together, and exactly.
 */
export function orderBounds({ lower, upper, correlation }: Bounds): OrderedBounds {
  const size = lower.length;
  const order = lower.map((_, i) => i);
  /** Rows of the factor, by the variable's own number. */
  const rows: number[][] = lower.map(() => []);
  const expected: number[] = [];
  const sum = (i: number): number => dot(rows[i] ?? [], expected);
  const spare = (i: number): number => Math.max(1 - dot(rows[i] ?? [], rows[i] ?? []), 0);

  for (let step = 0; step < size; step += 1) {
    const open = order.slice(step);
    /** Whether nothing is left to be known of an open variable once another is. */
    const settles = (i: number): boolean =>
      open.some((k) => {
        if (k === i || spare(k) <= DETERMINED) return false;
        const rest = entry(correlation, k, i) - dot(rows[k] ?? [], rows[i] ?? []);
        return spare(k) - rest ** 2 / spare(i) <= DETERMINED;
      });
    const free = open.filter((i) => spare(i) > DETERMINED);
    const late = step < size - 2 ? free.filter(settles) : [];
    let best = { at: step, probability: Number.POSITIVE_INFINITY, mean: 0 };
    for (let at = step; at < size; at += 1) {
      const i = order[at] ?? 0;
      if (!free.includes(i) || (late.includes(i) && late.length < free.length)) continue;
      const deviation = Math.sqrt(spare(i));
      const low = ((lower[i] ?? 0) - sum(i)) / deviation;
      const high = ((upper[i] ?? 0) - sum(i)) / deviation;
      const { mass, mean } = truncatedMoments(low, high);
      const inner = Math.max(low, Math.min(high, 0));
      if (mass < best.probability) best = { at, probability: mass, mean: mass > 0 ? mean : inner };
    }
    const chosen = order[best.at] ?? 0;
    order[best.at] = order[step] ?? 0;
    order[step] = chosen;
    extend(rows, chosen, order.slice(step), correlation, spare(chosen));
    expected.push(best.mean);
  }
  return {
    lower: order.map((i) => lower[i] ?? 0),
    upper: order.map((i) => upper[i] ?? 0),
    factor: order.map((i) => rows[i] ?? []),
  };
}

/** Adds the column of a chosen variable to the rows of all that are not yet done. */
function extend(
  rows: readonly number[][],
  chosen: number,
  open: readonly number[],
  correlation: readonly (readonly number[])[],
  spare: number,
): void {
  const pivot = spare > DETERMINED ? Math.sqrt(spare) : 0;
  const own = [...(rows[chosen] ?? [])];
  for (const i of open) {
    const row = rows[i] ?? [];
    const rest = i === chosen ? spare : entry(correlation, i, chosen) - dot(row, own);
    row.push(pivot > 0 ? rest / pivot : 0);
  }
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let k = 0; k < Math.min(a.length, b.length); k += 1) sum += (a[k] ?? 0) * (b[k] ?? 0);
  return sum;
}
