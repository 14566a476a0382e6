import { gammaTail } from "./gamma-kernel.ts";
import { requireNotNegative, requireShape } from "./require-argument.ts";

/**
 * The regularised lower incomplete gamma function P(a, x): the share of a gamma distribution of shape `a`
 * and scale 1 below `x`. Series (DLMF 8.11.4) and continued fraction (DLMF 8.9.2).
 *
 * @throws {@link InvalidArgumentError} when `a` is not from 10⁻¹⁰ to 10¹⁰, or `x` is below zero.
 *
 * @example
 * ```ts
 * import { incompleteGamma } from "@tapewise/statistics";
 * incompleteGamma(1, Math.LN2).toFixed(12); // => "0.500000000000"
 * ```
 */
export function incompleteGamma(a: number, x: number): number {
  requireShape("a", a);
  requireNotNegative("x", x);
  return gammaTail(a, x, false);
}
