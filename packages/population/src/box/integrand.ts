import { bivariateNormalBox, normalCdf, normalQuantile, normalUpperTail } from "@tapewise/statistics";
import type { OrderedBounds } from "./order-bounds.ts";

/** A function on the unit cube whose mean is the probability of a box. */
export interface Integrand {
  readonly dimensions: number;
  /** Whether the variable of an axis has an open end. */
  readonly isOpen: readonly boolean[];
  readonly value: (point: ArrayLike<number>) => number;
}

const SMALLEST = 2 ** -54;

/**
 * Genz's transformation: each variable in turn is drawn within its bounds given those before it, and the
 * probabilities of its bounds multiply; the last two are taken together in closed form.
 */
export function createIntegrand({ lower, upper, factor }: OrderedBounds): Integrand {
  const size = lower.length;
  const dimensions = size - 2;
  const [next, last] = [factor[size - 2] ?? [], factor[size - 1] ?? []];
  const nextDeviation = next[size - 2] ?? 0;
  const shared = last[size - 2] ?? 0;
  const lastDeviation = Math.hypot(shared, last[size - 1] ?? 0);
  const rho = lastDeviation > 0 ? Math.min(Math.max(shared / lastDeviation, -1), 1) : 0;
  const drawn = new Float64Array(dimensions);

  const bound = (bounds: readonly number[], i: number, deviation: number): number => {
    const row = factor[i] ?? [];
    let rest = bounds[i] ?? 0;
    for (let k = 0; k < Math.min(i, dimensions); k += 1) rest -= (row[k] ?? 0) * (drawn[k] ?? 0);
    if (deviation > 0) return rest / deviation;
    // A determined variable lies within its bounds or it does not.
    return rest === 0 ? 0 : rest * Number.POSITIVE_INFINITY;
  };

  const value = (point: ArrayLike<number>): number => {
    let product = 1;
    for (let i = 0; i < dimensions; i += 1) {
      const deviation = factor[i]?.[i] ?? 0;
      const low = bound(lower, i, deviation);
      const high = bound(upper, i, deviation);
      const [share, draw] = drawWithin(low, high, point[i] ?? 0.5);
      product *= share;
      if (product === 0) return 0;
      drawn[i] = draw;
    }
    return (
      product *
      bivariateNormalBox(
        bound(lower, size - 2, nextDeviation),
        bound(upper, size - 2, nextDeviation),
        bound(lower, size - 1, lastDeviation),
        bound(upper, size - 1, lastDeviation),
        rho,
      )
    );
  };
  const isOpen = Array.from(
    { length: dimensions },
    (_, i) => !(Number.isFinite(lower[i]) && Number.isFinite(upper[i])),
  );
  return { dimensions, isOpen, value };
}

/** The share of a standard normal variable within bounds, and its quantile there for `place` from 0 to 1. */
function drawWithin(low: number, high: number, place: number): readonly [share: number, draw: number] {
  if (low > 0) {
    const [share, draw] = drawWithin(-high, -low, 1 - place);
    return [share, -draw];
  }
  const below = normalCdf(low);
  const share = high > 0 ? 1 - normalUpperTail(high) - below : normalCdf(high) - below;
  if (!(share > 0)) return [0, 0];
  const p = Math.min(Math.max(below + place * share, SMALLEST), 1 - SMALLEST);
  return [share, Math.min(Math.max(normalQuantile(p), low), high)];
}
