import {
  normalCdf,
  normalIntervalProbability,
  normalPdf,
  normalQuantile,
  normalUpperTail,
} from "@tapewise/statistics";
import { requireFinite, requireNumber, requirePositive } from "../require-argument.ts";
import type { Distribution } from "./distribution.ts";

/** What makes a lognormal distribution: the logarithm of the excess over `shift` is normal. */
export interface LognormalParameters {
  /** Mean of ln(x − shift). */
  readonly meanLog: number;
  /** Standard deviation of ln(x − shift), above 0. */
  readonly sdLog: number;
  /** The value below which nobody is, in the unit of the quantity; 0 where it is left out. */
  readonly shift?: number;
}

/**
 * The lognormal distribution, of two parameters or, with a shift, of three. Skewed to the right, as girths and
 * body mass are.
 *
 * @throws {@link InvalidArgumentError} when a parameter is not finite or `sdLog` not above 0.
 *
 * @example
 * ```ts
 * import { lognormalDistribution } from "@tapewise/population";
 * const girth = lognormalDistribution({ meanLog: 6.8, sdLog: 0.08 });
 * girth.quantile(0.5).toFixed(2); // => "897.85"
 * girth.mean.toFixed(2); // => "900.73"
 * ```
 */
export function lognormalDistribution(parameters: LognormalParameters): Distribution {
  const { meanLog, sdLog, shift = 0 } = parameters;
  requireFinite("meanLog", meanLog);
  requirePositive("sdLog", sdLog);
  requireFinite("shift", shift);
  const growth = Math.expm1(sdLog * sdLog);
  const middle = Math.exp(meanLog + (sdLog * sdLog) / 2);
  const sd = middle * Math.sqrt(growth);
  requireFinite("the standard deviation", sd * sd);
  const standard = (argument: string, x: number): number => {
    requireNumber(argument, x);
    return x <= shift ? Number.NEGATIVE_INFINITY : (Math.log(x - shift) - meanLog) / sdLog;
  };
  const density = (x: number): number => {
    const z = standard("x", x);
    const height = normalPdf(z);
    // Right above the shift both go to 0, the height far sooner.
    return height === 0 ? 0 : height / (sdLog * (x - shift));
  };
  return {
    family: "lognormal",
    parameters: { meanLog, sdLog, shift },
    mean: shift + middle,
    sd,
    variance: sd * sd,
    skewness: (growth + 3) * Math.sqrt(growth),
    density,
    cumulative: (x) => normalCdf(standard("x", x)),
    upperTail: (x) => normalUpperTail(standard("x", x)),
    quantile: (p) => shift + Math.exp(meanLog + sdLog * normalQuantile(p)),
    probability: (within) =>
      normalIntervalProbability(standard("within.from", within.from), standard("within.to", within.to)),
    sample: (random) => shift + Math.exp(meanLog + sdLog * random.normal()),
  };
}
