import { integrateFromZero, normalCdf, normalPdf, normalUpperTail } from "@tapewise/statistics";
import { owensT } from "./owens-t.ts";

/** P(Z ≤ z) for a standard skew-normal variable of shape `alpha`, accurate relative to itself. */
export function skewNormalLower(z: number, alpha: number): number {
  return alpha < 0 ? aboveFor(-z, -alpha) : belowFor(z, alpha);
}

/** P(Z > z) for a standard skew-normal variable of shape `alpha`, accurate relative to itself. */
export function skewNormalUpper(z: number, alpha: number): number {
  return alpha < 0 ? belowFor(-z, -alpha) : aboveFor(z, alpha);
}

/** P(Z > z) for alpha from 0 up: Q(z) + 2 T(z, α), a sum in which nothing cancels where it is small. */
function aboveFor(z: number, alpha: number): number {
  return Math.min(normalUpperTail(z) + 2 * owensT(z, alpha), 1);
}

/** P(Z ≤ z) for alpha from 0 up: Φ(z) − 2 T(z, α), which cancels in the short tail on the left. */
function belowFor(z: number, alpha: number): number {
  const symmetric = normalCdf(z);
  const difference = symmetric - 2 * owensT(z, alpha);
  if (z >= 0 || difference > 0.01 * symmetric) return Math.max(difference, 0);
  return shortTail(z, alpha);
}

/** ∫ 2 φ(t) Φ(αt) dt up to a z below 0, in panels over which the integrand falls by about e. */
function shortTail(z: number, alpha: number): number {
  if (z === Number.NEGATIVE_INFINITY) return 0;
  const steepness = 1 + alpha * alpha;
  const panel = 1 / (-z * steepness + Math.sqrt(steepness));
  let sum = 0;
  for (let start = z; ; start -= panel) {
    const part = integrateFromZero((u) => 2 * normalPdf(start - u) * normalCdf(alpha * (start - u)), panel);
    sum += part;
    if (part <= 1e-17 * sum) return sum;
  }
}
