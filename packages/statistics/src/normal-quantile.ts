import {
  QUANTILE_CENTRE_DENOMINATOR,
  QUANTILE_CENTRE_NUMERATOR,
  QUANTILE_MIDDLE_DENOMINATOR,
  QUANTILE_MIDDLE_NUMERATOR,
  QUANTILE_TAIL_DENOMINATOR,
  QUANTILE_TAIL_NUMERATOR,
} from "./normal-data.ts";
import { polynomial } from "./polynomial.ts";
import { requireProbability } from "./require-argument.ts";

/**
 * The `z` below which a share `p` of the standard normal distribution lies. −`Infinity` for 0 and
 * `Infinity` for 1. For a small upper tail `q` take `-normalQuantile(q)`, which keeps every digit, and
 * not `normalQuantile(1 - q)`.
 *
 * Wichura's algorithm AS 241 (Applied Statistics 37, 1988).
 *
 * @throws {@link InvalidArgumentError} when `p` is not a probability from 0 to 1.
 *
 * @example
 * ```ts
 * import { normalQuantile } from "@tapewise/statistics";
 * normalQuantile(0.5); // => 0
 * normalQuantile(0.975).toFixed(6); // => "1.959964"
 * ```
 */
export function normalQuantile(p: number): number {
  requireProbability("p", p);
  const fromMedian = p - 0.5;
  if (Math.abs(fromMedian) <= 0.425) {
    const r = 0.180625 - fromMedian * fromMedian;
    return (
      (fromMedian * polynomial(QUANTILE_CENTRE_NUMERATOR, r)) / polynomial(QUANTILE_CENTRE_DENOMINATOR, r)
    );
  }
  const tail = fromMedian < 0 ? p : 1 - p;
  const z = tail === 0 ? Number.POSITIVE_INFINITY : upperQuantile(tail);
  return fromMedian < 0 ? -z : z;
}

function upperQuantile(tail: number): number {
  const r = Math.sqrt(-Math.log(tail));
  if (r <= 5) {
    return polynomial(QUANTILE_MIDDLE_NUMERATOR, r - 1.6) / polynomial(QUANTILE_MIDDLE_DENOMINATOR, r - 1.6);
  }
  return polynomial(QUANTILE_TAIL_NUMERATOR, r - 5) / polynomial(QUANTILE_TAIL_DENOMINATOR, r - 5);
}
