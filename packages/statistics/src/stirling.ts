import { HALF_STEP, STIRLING } from "./gamma-data.ts";
import { polynomial } from "./polynomial.ts";

/** ½ ln(2π). */
export const HALF_LOG_TWO_PI = 0.9189385332046728;

/** From here on eight terms of the series below are exact to rounding. */
export const SERIES_START = 10;

/** ln Γ(x) − [(x − ½) ln x − x + ½ ln 2π] for x ≥ {@link SERIES_START}. */
export function stirlingSeries(x: number): number {
  return polynomial(STIRLING, 1 / (x * x)) / x;
}

/** Γ(a + ½) / Γ(a) for a > 0, without the difference of two large logarithms. */
export function gammaHalfStep(a: number): number {
  let factor = 1;
  let x = a;
  while (x < SERIES_START) {
    factor *= x / (x + 0.5);
    x += 1;
  }
  return factor * Math.sqrt(x) * Math.exp(polynomial(HALF_STEP, 1 / (x * x)) / x);
}
