import { roundingCorrelation } from "./rounding-correlation.ts";

/**
 * The variance, in mm², that rounded readings show among themselves: what they scatter by plus what
 * rounding parts them by. Rounding that all of them share does not show: σ² + q²/12 · (1 − ρ(σ)).
 */
export function shownVariance(scatterVariance: number, stepMm: number): number {
  if (stepMm === 0) return scatterVariance;
  const shared = roundingCorrelation(Math.sqrt(scatterVariance), stepMm);
  return scatterVariance + (stepMm ** 2 / 12) * (1 - shared);
}

/**
 * The variance behind a shown one: the inverse of {@link shownVariance}, which rises steadily. Readings
 * that all fall on one mark show nothing, yet one mark is no proof that they do not scatter; taking
 * q²/12 off what is shown would go below zero there.
 */
export function scatterBehind(shown: number, stepMm: number): number {
  if (stepMm === 0 || shown === 0) return shown;
  const rounding = stepMm ** 2 / 12;
  // Rounding parts readings by q²/12 at most, and by nothing at least.
  let low = Math.max(0, shown - rounding);
  let high = shown;
  if (shownVariance(low, stepMm) >= shown) return low;
  for (let step = 0; step < MOST_HALVINGS; step += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (shownVariance(middle, stepMm) < shown) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Enough for a double: it halves an interval that is no longer than q²/12. */
const MOST_HALVINGS = 60;
