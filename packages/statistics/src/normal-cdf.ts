import { upperTail } from "./normal-kernel.ts";
import { requireNumber } from "./require-argument.ts";

/**
 * P(Z ≤ z) for a standard normal variable: the share of the distribution below `z`, in standard deviations
 * from the mean. Accurate relative to itself, far into the lower tail too; for the upper tail take
 * {@link normalUpperTail}, not one minus this.
 *
 * Cody's rational approximations (Math. Comp. 23, 1969).
 *
 * @throws {@link InvalidArgumentError} when `z` is `NaN`.
 *
 * @example
 * ```ts
 * import { normalCdf } from "@tapewise/statistics";
 * normalCdf(0); // => 0.5
 * normalCdf(-Infinity); // => 0
 * Number(normalCdf(1.96).toFixed(4)); // => 0.975
 * ```
 */
export function normalCdf(z: number): number {
  requireNumber("z", z);
  return upperTail(-z);
}
