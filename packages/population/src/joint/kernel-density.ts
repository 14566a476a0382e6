import { diagonal } from "./gaussian.ts";
import { weightedCovariance } from "./weighted-covariance.ts";

/**
 * The logarithm of a Gaussian kernel density at a point: a product kernel of Scott's widths sᵢ n^(−1/(d+4)) with
 * the effective number of people (D. W. Scott, 1992, Multivariate Density Estimation, 6.42). Variables
 * without any spread do not count, unless the point lies off them.
 */
export function kernelLogDensity(
  people: readonly (readonly number[])[],
  weights: readonly number[],
  point: readonly number[],
): number {
  const { mean, covariance } = weightedCovariance(people, weights);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const effective = total ** 2 / weights.reduce((sum, weight) => sum + weight * weight, 0);
  const shrink = effective ** (-1 / (point.length + 4));
  const widths = diagonal(covariance).map((variance) => Math.sqrt(variance) * shrink);
  if (widths.some((width, i) => width === 0 && point[i] !== mean[i])) return Number.NEGATIVE_INFINITY;
  const logs = people.map((person, n) =>
    widths.reduce(
      (sum, width, i) => {
        if (width === 0) return sum;
        const z = ((point[i] ?? 0) - (person[i] ?? 0)) / width;
        return sum - (z * z) / 2 - Math.log(width * Math.sqrt(2 * Math.PI));
      },
      Math.log((weights[n] ?? 0) / total),
    ),
  );
  const highest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  if (highest === Number.NEGATIVE_INFINITY) return highest;
  return highest + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - highest), 0));
}
