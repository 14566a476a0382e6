/**
 * What becomes of a number between two steps of a grid.
 *
 * - `half-even`: the nearest step, a tie to the even one: rule A of ISO 80000-1:2009, Annex B.
 * - `half-away-from-zero`: the nearest step, a tie to the larger magnitude: rule B of the same annex.
 * - `half-up`: the nearest step, a tie to the larger number, so that -2.5 becomes -2.
 * - `up`: the next larger number; `down`: the next smaller one; for negative numbers too.
 */
export type RoundingRule = "half-even" | "half-away-from-zero" | "half-up" | "up" | "down";

/** Every {@link RoundingRule}. */
export const roundingRules: readonly RoundingRule[] = [
  "half-even",
  "half-away-from-zero",
  "half-up",
  "up",
  "down",
];
