import { InvalidArgumentError } from "@tapewise/outcome";
import { normalQuantile } from "@tapewise/statistics";
import { requirePositive, requireShare } from "../require-number.ts";

/** How exactly limits of agreement are to be known. */
export interface LimitsPlan {
  /** Standard deviation of the differences that is expected, in mm. */
  readonly differenceSdMm: number;
  /** How far the confidence interval of each limit may reach to either side, in mm. */
  readonly halfWidthMm: number;
  /** Probability of the interval, and of the limits themselves; 0.95 where it is left out. */
  readonly probability?: number;
}

/**
 * How many subjects a comparison of two ways to measure needs so that the 95 % limits of agreement are known
 * to a wanted half-width h: n = 3 z² s²/h², rounded up, since the standard error of a limit is about √(3 s²/n)
 * (J. M. Bland & D. G. Altman 1986, The Lancet 327, 307–310). The 3 rounds 1 + z²/2 for z = 1.96, and that is
 * what is taken for other probabilities.
 *
 * @throws {@link InvalidArgumentError} when a length is not above 0 or the probability is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { subjectsForLimits } from "@tapewise/measurement";
 * subjectsForLimits({ differenceSdMm: 10, halfWidthMm: 3.4 }); // => 100
 * ```
 */
export function subjectsForLimits(plan: LimitsPlan): number {
  const { differenceSdMm, halfWidthMm, probability = 0.95 } = plan;
  requirePositive("differenceSdMm", differenceSdMm);
  requirePositive("halfWidthMm", halfWidthMm);
  requireShare("probability", probability);
  const z = normalQuantile((1 - probability) / 2);
  const factor = probability === 0.95 ? 3 : 1 + z ** 2 / 2;
  const subjects = Math.ceil(factor * ((z * differenceSdMm) / halfWidthMm) ** 2);
  if (!Number.isSafeInteger(subjects)) {
    throw new InvalidArgumentError(
      "halfWidthMm",
      halfWidthMm,
      "one that a countable number of subjects reaches",
    );
  }
  // A standard deviation needs two differences.
  return Math.max(2, subjects);
}
