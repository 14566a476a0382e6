import { bivariateNormalBox } from "./bivariate-normal-box.ts";
import { requireCorrelation, requireNumber } from "./require-argument.ts";

/**
 * P(X ≤ h, Y ≤ k) for two standard normal variables with correlation `rho`, from −1 to 1 with both ends.
 * The bounds may be infinite.
 *
 * The box of {@link bivariateNormalBox} with two open sides, and as accurate.
 *
 * @throws {@link InvalidArgumentError} when a bound is `NaN` or `rho` is not from −1 to 1.
 *
 * @example
 * ```ts
 * import { bivariateNormalCdf } from "@tapewise/statistics";
 * bivariateNormalCdf(0, 0, 0); // => 0.25
 * bivariateNormalCdf(0, 0, 0.5).toFixed(12); // => "0.333333333333"
 * bivariateNormalCdf(0, Infinity, -0.3); // => 0.5
 * ```
 */
export function bivariateNormalCdf(h: number, k: number, rho: number): number {
  requireNumber("h", h);
  requireNumber("k", k);
  requireCorrelation("rho", rho);
  return bivariateNormalBox(Number.NEGATIVE_INFINITY, h, Number.NEGATIVE_INFINITY, k, rho);
}
