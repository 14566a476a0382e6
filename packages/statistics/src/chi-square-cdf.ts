import { gammaTail } from "./gamma-kernel.ts";
import { requireNotNegative, requireShape } from "./require-argument.ts";

/**
 * P(X ≤ x) for the chi-square distribution with `df` degrees of freedom, accurate relative to itself in
 * the lower tail; for the upper tail take {@link chiSquareUpperTail}.
 *
 * @throws {@link InvalidArgumentError} when `x` is below zero or `df` is not from 10⁻¹⁰ to 10¹⁰.
 *
 * @example
 * ```ts
 * import { chiSquareCdf } from "@tapewise/statistics";
 * chiSquareCdf(0, 3); // => 0
 * chiSquareCdf(3.841458820694124, 1).toFixed(12); // => "0.950000000000"
 * ```
 */
export function chiSquareCdf(x: number, df: number): number {
  requireNotNegative("x", x);
  requireShape("df", df);
  return gammaTail(df / 2, x / 2, false);
}
