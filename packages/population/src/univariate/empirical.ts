import { contains } from "@tapewise/intervals";
import { normalPdf } from "@tapewise/statistics";
import { requireNumber, requireProbability, requireSample, requireWeights } from "../require-argument.ts";
import type { Distribution } from "./distribution.ts";
import { weightedMoments } from "./weighted-moments.ts";

/**
 * The distribution of a sample of people as they are, each with a weight where one is given. Shares and
 * quantiles are those of the sample: `quantile` gives the least value that is reached (type 1 of Hyndman & Fan);
 * `variance` divides by the sum of the weights.
 *
 * Only `density` smooths: a Gaussian kernel whose width is Silverman's rule of thumb (B. W. Silverman, 1986,
 * Density Estimation, equation 3.31) with Kish's effective sample size.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, or the weights are not one
 * number from 0 up for each value with at least one above 0.
 *
 * @example
 * ```ts
 * import { interval } from "@tapewise/intervals";
 * import { empiricalDistribution } from "@tapewise/population";
 * const crew = empiricalDistribution([402, 415, 415, 431]);
 * crew.mean; // => 415.75
 * crew.quantile(0.5); // => 415
 * crew.probability(interval(415, 440)); // => 0.75
 * ```
 */
export function empiricalDistribution(values: readonly number[], weights?: readonly number[]): Distribution {
  requireSample("values", values, 1);
  if (weights !== undefined) requireWeights("weights", weights, values.length);
  const people = values
    .map((value, index) => ({ value: value + 0, weight: weights?.[index] ?? 1 }))
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => a.value - b.value);
  const sorted = people.map(({ value }) => value);
  const share = people.map(({ weight }) => weight);
  const { total, mean, variance, third } = weightedMoments(sorted, share);
  const sd = Math.sqrt(variance);
  const upTo: number[] = [];
  for (const weight of share) upTo.push((upTo.at(-1) ?? 0) + weight);
  const whole = upTo.at(-1) ?? total;
  const weightUpTo = (x: number): number => upTo[countUpTo(sorted, x) - 1] ?? 0;
  const quantile = (p: number): number => {
    requireProbability("p", p);
    // A share that is reached but for rounding counts as reached.
    const target = p * whole * (1 - 4 * Number.EPSILON);
    const index = Math.min(countUpTo(upTo, target, true), sorted.length - 1);
    return sorted[index] ?? mean;
  };
  const width = kernelWidth(share, sd, quantile(0.75) - quantile(0.25));
  return {
    family: "empirical",
    parameters: { people: people.length, kernelWidth: width },
    mean,
    sd,
    variance,
    skewness: sd > 0 ? third / sd ** 3 : 0,
    density: (x) => {
      requireNumber("x", x);
      if (width === 0) return x === mean ? Number.POSITIVE_INFINITY : 0;
      const kernel = (value: number): number => normalPdf((x - value) / width) / width;
      return people.reduce((sum, { value, weight }) => sum + (weight / whole) * kernel(value), 0);
    },
    cumulative: (x) => {
      requireNumber("x", x);
      return weightUpTo(x) / whole;
    },
    upperTail: (x) => {
      requireNumber("x", x);
      return (whole - weightUpTo(x)) / whole;
    },
    quantile,
    probability: (within) => {
      requireNumber("within.from", within.from);
      requireNumber("within.to", within.to);
      const inside = people.filter(({ value }) => contains(within, value));
      return inside.reduce((sum, { weight }) => sum + weight, 0) / whole;
    },
    sample: (random) => quantile(random.uniform()),
  };
}

/** How many of the sorted numbers are at most `x`; with `below`, how many are below it. */
function countUpTo(sorted: readonly number[], x: number, below = false): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const value = sorted[middle] ?? 0;
    if (below ? value < x : value <= x) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** 0.9 min(sd, IQR / 1.34) n^(−1/5), by the standard deviation alone where half of the sample is equal. */
function kernelWidth(weights: readonly number[], sd: number, quartiles: number): number {
  const sum = weights.reduce((total, weight) => total + weight, 0);
  const effective = sum ** 2 / weights.reduce((total, weight) => total + weight ** 2, 0);
  const spread = quartiles > 0 ? Math.min(sd, quartiles / 1.34) : sd;
  return 0.9 * spread * effective ** -0.2;
}
