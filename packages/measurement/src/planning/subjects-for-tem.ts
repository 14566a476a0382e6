import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareQuantile } from "@tapewise/statistics";
import { requireCount, requirePositive, requireShare } from "../require-number.ts";

/** How exactly a technical error of measurement is to be known. */
export interface TemPlan {
  /** Readings of each subject: 2 or more. */
  readonly repeats: number;
  /** How far the upper end of the interval may lie above the TEM found, as a part of it: 0.2 is a fifth. */
  readonly precision: number;
  /** Probability of the interval; 0.95 where it is left out. */
  readonly probability?: number;
}

/** The bounds of a technical error of measurement, as multiples of the one found. */
export interface TemBounds {
  readonly lower: number;
  readonly upper: number;
}

/**
 * The confidence interval of a technical error of measurement from N subjects read K times, as multiples of the
 * one found: √(ν/χ²) with ν = N (K − 1) degrees of freedom, for normal errors.
 *
 * @throws {@link InvalidArgumentError} when there is no subject, fewer than two readings each, or the
 * probability is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { temBounds } from "@tapewise/measurement";
 * const { lower, upper } = temBounds(10, 2, 0.95);
 * [lower.toFixed(2), upper.toFixed(2)]; // => ["0.70", "1.75"]
 * ```
 */
export function temBounds(subjects: number, repeats: number, probability: number): TemBounds {
  requireCount("subjects", subjects);
  requireCount("repeats", repeats, 2);
  requireShare("probability", probability);
  const df = subjects * (repeats - 1);
  const tail = (1 - probability) / 2;
  return {
    lower: Math.sqrt(df / chiSquareQuantile(1 - tail, df)),
    upper: Math.sqrt(df / chiSquareQuantile(tail, df)),
  };
}

/** Beyond this many nobody measures, and the chi-square distribution is not made for it. Assumption. */
const MOST_SUBJECTS = 1_000_000;

/**
 * How many subjects a study needs so that the technical error of measurement is known to a wanted part of itself:
 * the fewest whose interval by {@link temBounds} ends no further above the one found.
 *
 * @throws {@link InvalidArgumentError} when there are fewer than two readings each, the precision is not above 0
 * or needs more than a million subjects, or the probability is not between 0 and 1.
 *
 * @example
 * ```ts
 * import { subjectsForTem } from "@tapewise/measurement";
 * subjectsForTem({ repeats: 2, precision: 0.75 }); // => 11
 * ```
 */
export function subjectsForTem(plan: TemPlan): number {
  const { repeats, precision, probability = 0.95 } = plan;
  requirePositive("precision", precision);
  const isEnough = (subjects: number): boolean =>
    temBounds(subjects, repeats, probability).upper - 1 <= precision;
  let enough = 1;
  while (!isEnough(enough)) {
    enough *= 2;
    if (enough > MOST_SUBJECTS) {
      throw new InvalidArgumentError("precision", precision, `one that ${MOST_SUBJECTS} subjects can reach`);
    }
  }
  let short = Math.floor(enough / 2);
  while (enough - short > 1) {
    const middle = Math.floor((short + enough) / 2);
    if (isEnough(middle)) enough = middle;
    else short = middle;
  }
  return enough;
}
