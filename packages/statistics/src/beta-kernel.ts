import { continuedFraction } from "./continued-fraction.ts";
import { deviance } from "./deviance.ts";
import { stirlingRemainder } from "./gamma-kernel.ts";
import { HALF_LOG_TWO_PI } from "./stirling.ts";

/** xᵃ yᵇ / B(a, b) with y = 1 − x: the density of the beta distribution times x y. */
export function betaSlope(x: number, y: number, a: number, b: number): number {
  if (x === 0 || y === 0) return 0;
  const n = a + b;
  const remainder = stirlingRemainder(n) - stirlingRemainder(a) - stirlingRemainder(b);
  const scale = Math.sqrt(a < b ? a * (b / n) : b * (a / n));
  return scale * Math.exp(remainder - deviance(a, n * x) - deviance(b, n * y) - HALF_LOG_TWO_PI);
}

/**
 * The regularised incomplete beta function Iₓ(a, b), unchecked. The caller gives x and y = 1 − x, each to
 * full accuracy, so that neither end loses digits; I with x and y, a and b exchanged is its complement.
 */
export function betaTail(x: number, y: number, a: number, b: number): number {
  if (x === 0) return 0;
  if (y === 0) return 1;
  if (x * (a + b + 2) <= a + 1) return (betaSlope(x, y, a, b) * betaFraction(x, a, b)) / a;
  return 1 - (betaSlope(x, y, a, b) * betaFraction(y, b, a)) / b;
}

/** The continued fraction of Iₓ(a, b), DLMF 8.17.22; quick for x up to (a + 1) / (a + b + 2). */
export function betaFraction(x: number, a: number, b: number): number {
  return continuedFraction(
    (n) => (n === 1 ? 1 : betaCoefficient(n - 1, x, a, b)),
    () => 1,
  );
}

function betaCoefficient(n: number, x: number, a: number, b: number): number {
  const m = Math.floor(n / 2);
  if (n % 2 === 0) return (m * (b - m) * x) / ((a + n - 1) * (a + n));
  return (-(a + m) * (a + b + m) * x) / ((a + n - 1) * (a + n));
}
