import { InvalidArgumentError } from "@tapewise/outcome";
import { normalQuantile } from "@tapewise/statistics";
import { requireCount, requireShare } from "../require-number.ts";

/** A test that readings are reliable enough. */
export interface IccTestPlan {
  /** The least intraclass correlation that would do, from 0 to below 1. */
  readonly least: number;
  /** The one that is expected, above the least. */
  readonly expected: number;
  /** Readings of each subject, or observers who read each subject: 2 or more. */
  readonly repeats: number;
  /** Chance to be wrong when the reliability is only the least: α; 0.05 where it is left out. */
  readonly significance?: number;
  /** Chance to find out when it is as expected: 1 − β; 0.8 where it is left out. */
  readonly power?: number;
  /** 1 for “is it above the least”, which is what is asked; 2 for “is it another”. 1 where it is left out. */
  readonly sides?: 1 | 2;
}

/**
 * How many subjects a study needs to show that the intraclass correlation is above a least one:
 * 1 + 2k (z₁₋α + z₁₋β)² / ((k − 1) (ln C)²) with C = (1 + kθ₀)/(1 + kθ₁), θ = ρ/(1 − ρ), rounded up
 * (S. D. Walter, M. Eliasziw & A. Donner 1998, Statistics in Medicine 17, 101–110).
 *
 * @throws {@link InvalidArgumentError} when the expected correlation is not above the least, a share is out of
 * range, or there are fewer than two readings each.
 *
 * @example
 * ```ts
 * import { subjectsForIccTest } from "@tapewise/measurement";
 * subjectsForIccTest({ least: 0.5, expected: 0.75, repeats: 3 }); // => 24
 * ```
 */
export function subjectsForIccTest(plan: IccTestPlan): number {
  const { least, expected, repeats: k, significance = 0.05, power = 0.8, sides = 1 } = plan;
  if (!(least >= 0 && least < 1)) throw new InvalidArgumentError("least", least, "from 0 to below 1");
  if (!(expected > least && expected < 1)) {
    throw new InvalidArgumentError("expected", expected, `above ${least} and below 1`);
  }
  requireCount("repeats", k, 2);
  requireShare("significance", significance);
  requireShare("power", power);
  if (sides !== 1 && sides !== 2) throw new InvalidArgumentError("sides", sides, "1 or 2");
  const reach = -normalQuantile(significance / sides) - normalQuantile(1 - power);
  if (!(reach > 0)) throw new InvalidArgumentError("power", power, "a chance above the significance");
  const odds = (icc: number): number => 1 + (k * icc) / (1 - icc);
  const logRatio = Math.log(odds(least) / odds(expected));
  const subjects = Math.ceil(1 + (2 * k * reach ** 2) / ((k - 1) * logRatio ** 2));
  if (!Number.isSafeInteger(subjects)) {
    throw new InvalidArgumentError("expected", expected, "far enough above the least for a countable study");
  }
  return Math.max(2, subjects);
}
