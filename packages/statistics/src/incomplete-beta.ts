import { betaTail } from "./beta-kernel.ts";
import { requireProbability, requireShape } from "./require-argument.ts";

/**
 * The regularised incomplete beta function Iₓ(a, b): the share of a beta distribution below `x`.
 * Continued fraction (DLMF 8.17.22).
 *
 * @throws {@link InvalidArgumentError} when `x` is not from 0 to 1, or `a` or `b` is not from
 * 10⁻¹⁰ to 10¹⁰.
 *
 * @example
 * ```ts
 * import { incompleteBeta } from "@tapewise/statistics";
 * incompleteBeta(0.25, 1, 1).toFixed(12); // => "0.250000000000"
 * incompleteBeta(1, 2, 3); // => 1
 * ```
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  requireProbability("x", x);
  requireShape("a", a);
  requireShape("b", b);
  return betaTail(x, 1 - x, a, b);
}
