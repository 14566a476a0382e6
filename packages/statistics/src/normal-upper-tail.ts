import { upperTail } from "./normal-kernel.ts";
import { requireNumber } from "./require-argument.ts";

/**
 * P(Z > z) for a standard normal variable, accurate relative to itself however small it is.
 *
 * Cody's rational approximations (Math. Comp. 23, 1969).
 *
 * @throws {@link InvalidArgumentError} when `z` is `NaN`.
 *
 * @example
 * ```ts
 * import { normalUpperTail } from "@tapewise/statistics";
 * normalUpperTail(0); // => 0.5
 * normalUpperTail(6).toPrecision(3); // => "9.87e-10"
 * ```
 */
export function normalUpperTail(z: number): number {
  requireNumber("z", z);
  return upperTail(z);
}
