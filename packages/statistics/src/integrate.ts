import { InvalidArgumentError } from "@tapewise/outcome";
import { SIXTEEN_POINTS } from "./gauss-legendre-data.ts";
import { requireFinite } from "./require-argument.ts";

/**
 * ∫ f(u) du from 0 to `width` by 16-point Gauss–Legendre quadrature: exact for polynomials up to degree
 * 31, and to rounding for integrands that are smooth and change by no more than about e over the width.
 * Split a wider range into panels. A width below zero integrates backwards.
 *
 * @throws {@link InvalidArgumentError} when `width` is not finite or `f` gives `NaN`.
 *
 * @example
 * ```ts
 * import { integrateFromZero } from "@tapewise/statistics";
 * integrateFromZero((u) => u * u, 3).toFixed(12); // => "9.000000000000"
 * ```
 */
export function integrateFromZero(f: (u: number) => number, width: number): number {
  requireFinite("width", width);
  const half = width / 2;
  let sum = 0;
  for (const [node, weight] of SIXTEEN_POINTS) {
    sum += weight * (f(half * (1 - node)) + f(half * (1 + node)));
  }
  if (Number.isNaN(sum)) throw new InvalidArgumentError("f", sum, "a function that gives numbers");
  return half * sum;
}
