import { gammaTail } from "./gamma-kernel.ts";
import { requireNotNegative, requireShape } from "./require-argument.ts";

/**
 * P(X > x) for the chi-square distribution with `df` degrees of freedom, accurate relative to itself
 * however small it is.
 *
 * @throws {@link InvalidArgumentError} when `x` is below zero or `df` is not from 10⁻¹⁰ to 10¹⁰.
 *
 * @example
 * ```ts
 * import { chiSquareUpperTail } from "@tapewise/statistics";
 * chiSquareUpperTail(0, 3); // => 1
 * chiSquareUpperTail(200, 2).toPrecision(6); // => "3.72008e-44"
 * ```
 */
export function chiSquareUpperTail(x: number, df: number): number {
  requireNotNegative("x", x);
  requireShape("df", df);
  return gammaTail(df / 2, x / 2, true);
}
