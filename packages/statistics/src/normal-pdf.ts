import { gaussian, INVERSE_ROOT_TWO_PI } from "./normal-kernel.ts";
import { requireNumber } from "./require-argument.ts";

/**
 * The density of the standard normal distribution at `z`: exp(−z²/2) / √(2π). Zero at ±`Infinity`.
 *
 * @throws {@link InvalidArgumentError} when `z` is `NaN`.
 *
 * @example
 * ```ts
 * import { normalPdf } from "@tapewise/statistics";
 * normalPdf(0); // => 0.3989422804014327
 * ```
 */
export function normalPdf(z: number): number {
  requireNumber("z", z);
  return INVERSE_ROOT_TWO_PI * gaussian(z);
}
