import { requireSample, requireWeights } from "../require-argument.ts";
import { weightedMoments } from "../univariate/weighted-moments.ts";

/** What a weighted sample comes to, in the unit of the values. */
export interface WeightedSummary {
  /** How many people count at all. */
  readonly people: number;
  /** Kish's effective number: (Σw)² / Σw². */
  readonly effectivePeople: number;
  readonly mean: number;
  /** Of the mean, linearised: √(n/(n − 1) Σ w² (x − mean)²) / Σw. Absent for one person. */
  readonly standardError?: number;
  /** Free of bias for equal weights: the variance times n / (n − 1) with the effective n. Absent for one person. */
  readonly sd?: number;
  readonly min: number;
  readonly max: number;
}

/**
 * Mean, standard deviation and effective size of a sample in which people count differently. With equal weights
 * it is the plain summary, with divisor n − 1.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, or the weights are not one
 * number from 0 up for each value with at least one above 0.
 *
 * @example
 * ```ts
 * import { weightedSummary } from "@tapewise/population";
 * const summary = weightedSummary([400, 420], [3, 1]);
 * summary.mean; // => 405
 * summary.effectivePeople; // => 1.6
 * ```
 */
export function weightedSummary(values: readonly number[], weights: readonly number[]): WeightedSummary {
  requireSample("values", values, 1);
  requireWeights("weights", weights, values.length);
  const counted = values.flatMap((value, i) => {
    const weight = weights[i] ?? 0;
    return weight > 0 ? [{ value, weight }] : [];
  });
  const list = counted.map(({ value }) => value);
  const { total, mean, variance } = weightedMoments(
    list,
    counted.map(({ weight }) => weight),
  );
  const people = list.length;
  const effectivePeople = total ** 2 / counted.reduce((sum, { weight }) => sum + weight ** 2, 0);
  const squares = counted.reduce((sum, { value, weight }) => sum + (weight * (value - mean)) ** 2, 0);
  const spread =
    people === 1
      ? {}
      : {
          standardError: Math.sqrt((people / (people - 1)) * squares) / total,
          sd: Math.sqrt((variance * effectivePeople) / (effectivePeople - 1)),
        };
  return {
    people,
    effectivePeople,
    mean,
    ...spread,
    min: list.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY),
    max: list.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY),
  };
}
