import { InvalidArgumentError } from "@tapewise/outcome";
import { ONE_MINUS_EULER, ZETA_MINUS_ONE } from "./gamma-data.ts";
import { HALF_LOG_TWO_PI, SERIES_START, stirlingSeries } from "./stirling.ts";

/**
 * The natural logarithm of the gamma function for a positive argument, accurate relative to itself, next
 * to its zeros at 1 and 2 too. `Infinity` when the result is beyond the largest double.
 *
 * Taylor series about 2 (DLMF 5.7.3), recurrence, and Stirling's series from 10 on (DLMF 5.11.1).
 *
 * @throws {@link InvalidArgumentError} when `x` is not above zero.
 *
 * @example
 * ```ts
 * import { logGamma } from "@tapewise/statistics";
 * logGamma(1); // => 0
 * Math.exp(logGamma(5)).toFixed(10); // => "24.0000000000"
 * ```
 */
export function logGamma(x: number): number {
  if (!(x > 0)) throw new InvalidArgumentError("x", x, "a number above zero");
  if (x === Number.POSITIVE_INFINITY) return x;
  if (x < 0.5) return aroundOne(x) - Math.log(x);
  if (x < 1.5) return aroundOne(x - 1);
  if (x < 2.5) return aroundTwo(x - 2);
  if (x >= SERIES_START) return (x - 0.5) * Math.log(x) - x + HALF_LOG_TWO_PI + stirlingSeries(x);
  let product = 1;
  let rest = x;
  while (rest >= 2.5) {
    rest -= 1;
    product *= rest;
  }
  return Math.log(product) + aroundTwo(rest - 2);
}

/** ln Γ(1 + z) for −½ ≤ z ≤ ½. */
function aroundOne(z: number): number {
  return aroundTwo(z) - Math.log1p(z);
}

/** ln Γ(2 + z) for −½ ≤ z ≤ ½. */
function aroundTwo(z: number): number {
  let sum = 0;
  for (let i = ZETA_MINUS_ONE.length - 1; i >= 0; i -= 1) {
    sum = (ZETA_MINUS_ONE[i] as number) / (i + 2) - z * sum;
  }
  return z * (ONE_MINUS_EULER + z * sum);
}
