import { InvalidArgumentError } from "@tapewise/outcome";
import { normalQuantile } from "@tapewise/statistics";
import { requireCount, requireShare } from "../require-number.ts";

/** How exactly a reliability is to be known. */
export interface IccWidthPlan {
  /** The intraclass correlation that is expected, between 0 and 1. */
  readonly icc: number;
  /** Readings of each subject, or observers who read each subject: 2 or more. */
  readonly repeats: number;
  /** Wanted width of the confidence interval, from end to end, between 0 and 1. */
  readonly width: number;
  /** Its probability; 0.95 where it is left out. */
  readonly probability?: number;
}

/**
 * How many subjects a reliability study needs so that the confidence interval of the intraclass correlation
 * has a wanted width: n = 8 z² (1 − ρ)² (1 + (k − 1) ρ)² / (k (k − 1) w²) + 1 (D. G. Bonett 2002, Statistics in
 * Medicine 21, 1331–1335, equation 3), and 5ρ more for two readings and ρ from 0.7 on, as he advises there.
 * An approximation for one-way and two-way designs alike. Rounded up.
 *
 * @throws {@link InvalidArgumentError} when a share is not between 0 and 1 or there are fewer than two readings each.
 *
 * @example
 * ```ts
 * import { subjectsForIccWidth } from "@tapewise/measurement";
 * subjectsForIccWidth({ icc: 0.85, repeats: 4, width: 0.2 }); // => 20
 * ```
 */
export function subjectsForIccWidth(plan: IccWidthPlan): number {
  const { icc, repeats: k, width, probability = 0.95 } = plan;
  requireShare("icc", icc);
  requireCount("repeats", k, 2);
  requireShare("width", width);
  requireShare("probability", probability);
  const z = normalQuantile((1 - probability) / 2);
  const spread = z * (1 - icc) * (1 + (k - 1) * icc);
  const plain = (8 * spread ** 2) / (k * (k - 1) * width ** 2) + 1;
  const subjects = Math.ceil(plain + (k === 2 && icc >= 0.7 ? 5 * icc : 0));
  if (!Number.isSafeInteger(subjects)) {
    throw new InvalidArgumentError("width", width, "a width that a countable number of subjects reaches");
  }
  // A variance between subjects needs two of them.
  return Math.max(2, subjects);
}
