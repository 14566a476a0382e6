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
  const deviances = deviance(a, scaled(n, x)) + deviance(b, scaled(n, y));
  return scale * Math.exp(remainder - deviances - HALF_LOG_TWO_PI);
}

/**
 * The regularised incomplete beta function Iₓ(a, b), unchecked. The caller gives x and y = 1 − x, each to
 * full accuracy, so that neither end loses digits; I with x and y, a and b exchanged is its complement.
 */
export function betaTail(x: number, y: number, a: number, b: number): number {
  if (x === 0) return 0;
  if (y === 0) return 1;
  // Rounding may carry a share that is nearly whole a little past one.
  const share = (tail: number): number => Math.min(tail, 1);
  if (x * (a + b + 2) <= a + 1) return share(betaSlope(x, y, a, b) * betaFraction(x, y, a, b));
  return 1 - share(betaSlope(x, y, a, b) * betaFraction(y, x, b, a));
}

/**
 * The beta variable x = r / (1 + r) of odds r and its complement, neither of which loses digits or ends
 * at 0 or 1 before it must.
 */
export function fromOdds(r: number): readonly [x: number, y: number] {
  return [r > 1 ? 1 / (1 + 1 / r) : r / (1 + r), 1 / (1 + r)];
}

/** n x, kept from underflow to zero, whose logarithm would be infinite. */
function scaled(n: number, x: number): number {
  return Math.max(n * x, Number.MIN_VALUE);
}

/**
 * Iₓ(a, b) over {@link betaSlope}, quick for x up to (a + 1) / (a + b + 2): the even part of the continued
 * fraction of DLMF 8.17.22, in the form of A. R. DiDonato & A. H. Morris (1992), "Algorithm 708", ACM
 * Transactions on Mathematical Software 18, 360–373, whose terms do not cancel when x is close to 1.
 */
export function betaFraction(x: number, y: number, a: number, b: number): number {
  const lead = a * y - b * x + 1;
  return continuedFraction(
    (n) => {
      if (n === 1) return 1;
      const m = n - 1;
      const step = x / (a + (2 * m - 1));
      return (a + (m - 1)) * step * (m * (b - m)) * step * (a + b + (m - 1));
    },
    (n) => {
      const m = n - 1;
      const first = m === 0 ? 0 : m + (m * (b - m) * x) / (a + (2 * m - 1));
      return first + ((a + m) / (a + (2 * m + 1))) * (lead + m * (1 + y));
    },
  );
}
