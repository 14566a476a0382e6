import { requireSample, requireWeights } from "../require-argument.ts";
import type { Distribution } from "../univariate/distribution.ts";

/** A point of a quantile-quantile plot. */
export interface QqPoint {
  /** The share of people at which both quantiles stand. */
  readonly share: number;
  /** Where the distribution has that quantile, in the unit of the values. */
  readonly expected: number;
  /** Where the sample has it. */
  readonly observed: number;
}

/**
 * A sample beside a distribution, quantile by quantile: points on the line observed = expected mean agreement,
 * and their distance from it is in the unit of the values, so that it can be weighed against a size's step.
 * The shares are those of Hazen, (i − ½) / n; with weights, the middle of each person's share.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, or the weights are not one
 * number from 0 up for each value.
 *
 * @example
 * ```ts
 * import { normalDistribution, qqPoints } from "@tapewise/population";
 * const points = qqPoints([395, 400, 411], normalDistribution({ mean: 400, sd: 10 }));
 * points[1]; // => { share: 0.5, expected: 400, observed: 400 }
 * ```
 */
export function qqPoints(
  values: readonly number[],
  distribution: Distribution,
  weights?: readonly number[],
): readonly QqPoint[] {
  requireSample("values", values, 1);
  if (weights !== undefined) requireWeights("weights", weights, values.length);
  const people = values
    .map((value, index) => ({ value, weight: weights?.[index] ?? 1 }))
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => a.value - b.value);
  const total = people.reduce((sum, { weight }) => sum + weight, 0);
  let below = 0;
  return people.map(({ value, weight }) => {
    const share = (below + weight / 2) / total;
    below += weight;
    return { share, expected: distribution.quantile(share), observed: value };
  });
}
