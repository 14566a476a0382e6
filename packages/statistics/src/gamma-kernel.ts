import { continuedFraction } from "./continued-fraction.ts";
import { deviance } from "./deviance.ts";
import { logGamma } from "./log-gamma.ts";
import { HALF_LOG_TWO_PI, SERIES_START, stirlingSeries } from "./stirling.ts";

/** ln Γ(a) less its leading part (a − ½) ln a − a + ½ ln 2π, for any a > 0. */
export function stirlingRemainder(a: number): number {
  if (a >= SERIES_START) return stirlingSeries(a);
  return logGamma(a) - (a - 0.5) * Math.log(a) + a - HALF_LOG_TWO_PI;
}

/** xᵃ e⁻ˣ / Γ(a): the density of the gamma distribution times x. */
export function gammaSlope(a: number, x: number): number {
  if (x === 0 || x === Number.POSITIVE_INFINITY) return 0;
  return Math.sqrt(a) * Math.exp(-deviance(a, x) - stirlingRemainder(a) - HALF_LOG_TWO_PI);
}

/** The regularised incomplete gamma function P(a, x), lower or upper, unchecked. */
export function gammaTail(a: number, x: number, upper: boolean): number {
  if (x === 0) return upper ? 1 : 0;
  if (x === Number.POSITIVE_INFINITY) return upper ? 0 : 1;
  // Rounding may carry a share that is nearly whole a little past one.
  if (x < a + 1) {
    const lower = Math.min(gammaSlope(a, x) * lowerSeries(a, x), 1);
    return upper ? 1 - lower : lower;
  }
  const tail = Math.min(gammaSlope(a, x) * upperFraction(a, x), 1);
  return upper ? tail : 1 - tail;
}

/** γ(a, x) eˣ x⁻ᵃ by its power series (DLMF 8.11.4). */
function lowerSeries(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** Γ(a, x) eˣ x⁻ᵃ by its continued fraction (DLMF 8.9.2, contracted). */
function upperFraction(a: number, x: number): number {
  return continuedFraction(
    (n) => (n === 1 ? 1 : (n - 1) * (a - n + 1)),
    (n) => x + 2 * n - 1 - a,
  );
}
