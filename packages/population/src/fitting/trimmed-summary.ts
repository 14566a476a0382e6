import { InvalidArgumentError } from "@tapewise/outcome";
import { requireSample } from "../require-argument.ts";

/** The middle of a sample, without its ends, in the unit of the values. */
export interface TrimmedSummary {
  readonly people: number;
  /** How many were left out at each end. */
  readonly leftOutEach: number;
  readonly mean: number;
  /** Of the trimmed mean, by the winsorised sum of squares. */
  readonly standardError: number;
}

/**
 * The mean without a share of the sample at each end, with its standard error after K. K. Yuen (1974, Biometrika
 * 61, 165–170): √(SSw / (h (h − 1))), where SSw is the sum of squares after each left-out value is replaced by the
 * nearest that is kept, and h values are kept. Slips in a survey move it little; nothing is removed from the data.
 *
 * @throws {@link InvalidArgumentError} when one value is not finite, the share is not from 0 to below 0.5, or
 * fewer than two values are kept.
 *
 * @example
 * ```ts
 * import { trimmedSummary } from "@tapewise/population";
 * const summary = trimmedSummary([398, 402, 405, 409, 4090], 0.2);
 * summary.leftOutEach; // => 1
 * summary.mean.toFixed(2); // => "405.33"
 * ```
 */
export function trimmedSummary(values: readonly number[], share: number): TrimmedSummary {
  requireSample("values", values, 2);
  if (!(share >= 0 && share < 0.5)) throw new InvalidArgumentError("share", share, "from 0 to below 0.5");
  const sorted = [...values].sort((a, b) => a - b);
  const leftOutEach = Math.floor(share * sorted.length + 1e-9);
  const kept = sorted.slice(leftOutEach, sorted.length - leftOutEach);
  if (kept.length < 2)
    throw new InvalidArgumentError("share", share, "a share that leaves at least two values");
  const mean = meanOf(kept);
  const [least = 0, most = 0] = [kept[0], kept[kept.length - 1]];
  const winsorised = sorted.map((value) => Math.min(Math.max(value, least), most));
  const centre = meanOf(winsorised);
  const squares = winsorised.reduce((sum, value) => sum + (value - centre) ** 2, 0);
  const standardError = Math.sqrt(squares / (kept.length * (kept.length - 1)));
  return { people: values.length, leftOutEach, mean, standardError };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
