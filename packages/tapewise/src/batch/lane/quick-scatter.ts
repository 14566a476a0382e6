import { roundingCorrelation } from "@tapewise/measurement";

/** From so many steps of scatter on, rounding errors of different readings have nothing to do with each other. */
const FREE_OF_ROUNDING = 1.2;

/** How the rounding errors of two readings go together, for a variance and a step in mm. */
export function correlation(variance: number, step: number): number {
  const scatter = Math.sqrt(variance);
  return scatter > FREE_OF_ROUNDING * step ? 0 : roundingCorrelation(scatter, step);
}

/** The variance that readings show whose scatter is rounded to a step. */
export function shownVariance(variance: number, step: number): number {
  return variance + (step ** 2 / 12) * (1 - correlation(variance, step));
}

/**
 * The variance behind a shown one. Where readings scatter over some steps, what rounding adds is all but a number,
 * and putting it in a few times settles it; else by false position (the Illinois variant of M. Dowell & P. Jarratt
 * 1971), for it rises steadily.
 */
export function scatterBehind(shown: number, step: number): number {
  const rounding = step ** 2 / 12;
  let variance = shown - rounding;
  for (let turn = 0; variance > 0 && turn < MOST_TURNS; turn += 1) {
    const next = shown - rounding * (1 - correlation(variance, step));
    if (Math.abs(next - variance) <= 1e-15 * next) return next;
    variance = next;
  }
  let [low, high] = [Math.max(0, shown - rounding), shown];
  let [less, more] = [shownVariance(low, step) - shown, shownVariance(high, step) - shown];
  for (let turn = 0; less < 0 && more > 0 && turn < 60; turn += 1) {
    const middle = (low * more - high * less) / (more - less);
    const off = shownVariance(middle, step) - shown;
    if (Math.abs(off) <= 1e-15 * shown) return middle;
    if (off < 0) {
      if (middle - low < 1e-16 * shown) return middle;
      [low, less] = [middle, off];
      more /= 2;
    } else {
      if (high - middle < 1e-16 * shown) return middle;
      [high, more] = [middle, off];
      less /= 2;
    }
  }
  return Number.NaN;
}

const MOST_TURNS = 6;
