import { InvalidArgumentError } from "@tapewise/outcome";
import { upperTail } from "./normal-kernel.ts";

/**
 * Writes {@link normalCdf} of every number of `x` into the same place of `out`: the same bits as one by
 * one, with the checks taken out of the loop. `out` may be `x` itself; nothing is written when it throws.
 *
 * @throws {@link InvalidArgumentError} when the lengths differ or `x` holds `NaN`.
 *
 * @example
 * ```ts
 * import { normalCdfInto } from "@tapewise/statistics";
 * const shares = Float64Array.of(-Infinity, 0, Infinity);
 * normalCdfInto(shares, shares);
 * Array.from(shares); // => [0, 0.5, 1]
 * ```
 */
export function normalCdfInto(x: Float64Array, out: Float64Array): void {
  if (out.length !== x.length) {
    throw new InvalidArgumentError("out", out.length, `as long as x (${x.length} numbers)`);
  }
  for (let i = 0; i < x.length; i += 1) {
    if (Number.isNaN(x[i])) throw new InvalidArgumentError(`x[${i}]`, x[i], "a number");
  }
  for (let i = 0; i < x.length; i += 1) out[i] = upperTail(-(x[i] as number));
}
