import type { Random } from "@tapewise/statistics";
import {
  requireConfidence,
  requireCount,
  requireFinite,
  requireSample,
  requireWeights,
} from "../require-argument.ts";
import { samplePercentile } from "./percentile.ts";

/** A figure of a sample with the spread that it has from sample to sample. */
export interface BootstrapInterval {
  /** The figure of the sample itself. */
  readonly value: number;
  readonly standardError: number;
  readonly lower: number;
  readonly upper: number;
}

/** How to resample. */
export interface BootstrapOptions {
  readonly random: Random;
  readonly weights?: readonly number[];
  /** How many samples; 999 where it is left out. */
  readonly replicates?: number;
  /** Probability of the interval; 0.95 where it is left out. */
  readonly confidence?: number;
}

/**
 * The uncertainty of any figure of a sample, by drawing people with replacement, each with the own weight, and
 * working the figure out anew (percentile bootstrap, B. Efron & R. J. Tibshirani, 1993, 13.3). The same stream
 * gives the same interval. For a percentile near an end of a small sample it is too short; see
 * {@link percentileInterval}.
 *
 * @throws {@link InvalidArgumentError} when there are not two values, one is not finite, the weights are not
 * one number from 0 up each, the figure of a sample is not finite, or an option is out of range.
 *
 * @example
 * ```ts
 * import { bootstrapInterval, samplePercentile } from "@tapewise/population";
 * import { createRandom } from "@tapewise/statistics";
 * const torsos = [388, 393, 397, 400, 402, 404, 409, 411, 415, 421];
 * const median = bootstrapInterval(torsos, (sample) => samplePercentile(sample, 0.5, 8), {
 *   random: createRandom(1),
 * });
 * median.value; // => 403
 * median.lower < 403 && 403 < median.upper; // => true
 * ```
 */
export function bootstrapInterval(
  values: readonly number[],
  figure: (sample: readonly number[], weights?: readonly number[]) => number,
  options: BootstrapOptions,
): BootstrapInterval {
  const { random, weights, replicates = 999, confidence = 0.95 } = options;
  requireSample("values", values, 2);
  if (weights !== undefined) requireWeights("weights", weights, values.length);
  requireCount("options.replicates", replicates, 20);
  requireConfidence("options.confidence", confidence);
  const value = figure(values, weights);
  requireFinite("figure", value);
  const figures = Array.from({ length: replicates }, (_, replicate) => {
    const stream = random.fork(replicate);
    for (;;) {
      const drawn = values.map(() => stream.integer(0, values.length - 1));
      const drawnWeights = weights && drawn.map((index) => weights[index] ?? 0);
      // A draw of people who all count nothing is no sample.
      if (drawnWeights !== undefined && !drawnWeights.some((weight) => weight > 0)) continue;
      const sample = drawn.map((index) => values[index] ?? 0);
      const result = figure(sample, drawnWeights);
      requireFinite("figure", result);
      return result;
    }
  });
  const mean = figures.reduce((sum, each) => sum + each, 0) / replicates;
  const squares = figures.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  const miss = (1 - confidence) / 2;
  return {
    value,
    standardError: Math.sqrt(squares / (replicates - 1)),
    lower: samplePercentile(figures, miss, 6),
    upper: samplePercentile(figures, 1 - miss, 6),
  };
}
