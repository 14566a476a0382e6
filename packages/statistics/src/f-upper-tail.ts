import { betaTail, fromOdds } from "./beta-kernel.ts";
import { requireNotNegative, requireShape } from "./require-argument.ts";

/**
 * P(F > x) for the F distribution with `df1` and `df2` degrees of freedom, accurate relative to itself
 * however small it is.
 *
 * @throws {@link InvalidArgumentError} when `x` is below zero, or `df1` or `df2` is not from
 * 10⁻¹⁰ to 10¹⁰.
 *
 * @example
 * ```ts
 * import { fUpperTail } from "@tapewise/statistics";
 * fUpperTail(0, 4, 10); // => 1
 * fUpperTail(1, 7, 7).toFixed(12); // => "0.500000000000"
 * ```
 */
export function fUpperTail(x: number, df1: number, df2: number): number {
  requireNotNegative("x", x);
  requireShape("df1", df1);
  requireShape("df2", df2);
  const [below, above] = fromOdds((df1 / df2) * x);
  return betaTail(above, below, df2 / 2, df1 / 2);
}
