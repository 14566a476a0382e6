import {
  normalCdf,
  normalIntervalProbability,
  normalPdf,
  normalQuantile,
  normalUpperTail,
} from "@tapewise/statistics";
import { requireFinite, requireNumber, requirePositive } from "../require-argument.ts";
import type { Distribution } from "./distribution.ts";

/** What makes a normal distribution. */
export interface NormalParameters {
  readonly mean: number;
  /** Standard deviation, above 0. */
  readonly sd: number;
}

/**
 * The normal distribution, in the unit of its mean and standard deviation.
 *
 * @throws {@link InvalidArgumentError} when the mean is not finite or the standard deviation not above 0.
 *
 * @example
 * ```ts
 * import { interval } from "@tapewise/intervals";
 * import { normalDistribution } from "@tapewise/population";
 * const torso = normalDistribution({ mean: 400, sd: 22.7 });
 * torso.quantile(0.95).toFixed(1); // => "437.3"
 * torso.probability(interval(380, 430)).toFixed(3); // => "0.718"
 * ```
 */
export function normalDistribution(parameters: NormalParameters): Distribution {
  const { mean, sd } = parameters;
  requireFinite("mean", mean);
  requirePositive("sd", sd);
  const standard = (argument: string, x: number): number => {
    requireNumber(argument, x);
    return (x - mean) / sd;
  };
  return {
    family: "normal",
    parameters: { mean, sd },
    mean,
    sd,
    variance: sd * sd,
    skewness: 0,
    density: (x) => normalPdf(standard("x", x)) / sd,
    cumulative: (x) => normalCdf(standard("x", x)),
    upperTail: (x) => normalUpperTail(standard("x", x)),
    quantile: (p) => mean + sd * normalQuantile(p),
    probability: (within) =>
      normalIntervalProbability(standard("within.from", within.from), standard("within.to", within.to)),
    sample: (random) => mean + sd * random.normal(),
  };
}
