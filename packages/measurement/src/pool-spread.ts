import { InvalidArgumentError } from "@tapewise/outcome";
import { requireNotNegative } from "./require-number.ts";

/** A variance and how well it is known. */
export interface KnownVariance {
  readonly variance: number;
  /** Degrees of freedom, 0 or more; `Infinity` where the variance counts as known. */
  readonly degreesOfFreedom: number;
}

/**
 * Pools what the readings show of their spread with what is known of the method: the mean of the two
 * variances weighted by degrees of freedom, which add.
 *
 * With a scaled inverse chi-square distribution for the variance beforehand this is its posterior
 * scale (conjugate update for a normal variance), and it keeps two readings that happen to agree from
 * looking perfect. A method known with infinite degrees of freedom wins.
 *
 * @throws {@link InvalidArgumentError} for a negative variance, negative degrees of freedom, or none in sum.
 *
 * @example
 * ```ts
 * import { poolSpread } from "@tapewise/measurement";
 * poolSpread({ variance: 64, degreesOfFreedom: 8 }, { variance: 4, degreesOfFreedom: 2 });
 * // => { variance: 52, degreesOfFreedom: 10 }
 * ```
 */
export function poolSpread(method: KnownVariance, sample: KnownVariance): KnownVariance {
  for (const part of [method, sample]) {
    requireNotNegative("variance", part.variance);
    if (!(part.degreesOfFreedom >= 0)) {
      throw new InvalidArgumentError("degreesOfFreedom", part.degreesOfFreedom, "0 or more");
    }
  }
  if (method.degreesOfFreedom === Number.POSITIVE_INFINITY) return method;
  if (sample.degreesOfFreedom === Number.POSITIVE_INFINITY) return sample;
  const degreesOfFreedom = method.degreesOfFreedom + sample.degreesOfFreedom;
  if (degreesOfFreedom === 0) throw new InvalidArgumentError("degreesOfFreedom", 0, "above 0 in sum");
  const share = sample.degreesOfFreedom / degreesOfFreedom;
  return { variance: method.variance * (1 - share) + sample.variance * share, degreesOfFreedom };
}
