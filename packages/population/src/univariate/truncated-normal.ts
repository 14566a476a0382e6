import { InvalidArgumentError } from "@tapewise/outcome";
import { normalIntervalProbability, normalPdf } from "@tapewise/statistics";
import { requireFinite, requireNumber, requirePositive, requireProbability } from "../require-argument.ts";
import type { Distribution } from "./distribution.ts";
import { solveQuantile } from "./solve-quantile.ts";
import { truncatedMoments } from "./truncated-moments.ts";

/** A normal distribution of which only the part between two bounds is left. */
export interface TruncatedNormalParameters {
  /** Mean before anything is cut off. */
  readonly mean: number;
  /** Standard deviation before anything is cut off, above 0. */
  readonly sd: number;
  /** The least value left; −`Infinity` where it is left out. */
  readonly from?: number;
  /** The greatest value left; `Infinity` where it is left out. */
  readonly to?: number;
}

/**
 * The normal distribution of those who lie between two bounds: people of a stature range, readings of a range
 * of sizes. `mean`, `sd` and `skewness` are those of the part that is left, accurate far out in a tail and over a
 * narrow range too; `parameters.share` is the part's share of the whole.
 *
 * @throws {@link InvalidArgumentError} when the mean is not finite, the standard deviation not above 0, the
 * bounds are not in order, or so far out that the share between them is 0 in a double.
 *
 * @example
 * ```ts
 * import { truncatedNormal } from "@tapewise/population";
 * const tall = truncatedNormal({ mean: 1628.5, sd: 64.2, from: 1750 });
 * tall.mean.toFixed(3); // => "1774.772"
 * tall.sd.toFixed(3); // => "22.322"
 * ```
 */
export function truncatedNormal(parameters: TruncatedNormalParameters): Distribution {
  const { mean, sd, from = Number.NEGATIVE_INFINITY, to = Number.POSITIVE_INFINITY } = parameters;
  requireFinite("mean", mean);
  requirePositive("sd", sd);
  requireNumber("from", from);
  requireNumber("to", to);
  if (!(from < to)) throw new InvalidArgumentError("to", to, `a number above from (${from})`);
  const [a, b] = [(from - mean) / sd, (to - mean) / sd];
  const moments = truncatedMoments(a, b);
  const share = moments.mass;
  if (!(share > 0)) throw new InvalidArgumentError("from", from, "bounds with a share between them");

  const inside = (argument: string, x: number): number => {
    requireNumber(argument, x);
    return Math.min(Math.max((x - mean) / sd, a), b);
  };
  const outside = (x: number): boolean => x < from || x > to;
  const density = (x: number): number => {
    const z = inside("x", x);
    return outside(x) ? 0 : normalPdf(z) / (sd * share);
  };
  const cumulative = (x: number): number => normalIntervalProbability(a, inside("x", x)) / share;
  const upperTail = (x: number): number => normalIntervalProbability(inside("x", x), b) / share;
  const own = { mean: mean + sd * moments.mean, sd: sd * Math.sqrt(moments.variance) };
  const quantile = (p: number): number => {
    requireProbability("p", p);
    const problem = { density, cumulative, upperTail, from, to, start: own.mean, step: own.sd };
    return solveQuantile(problem, p);
  };
  return {
    family: "truncated-normal",
    parameters: { mean, sd, from, to, share },
    ...own,
    variance: own.sd * own.sd,
    skewness: moments.skewness,
    density,
    cumulative,
    upperTail,
    quantile,
    probability: (within) => {
      const [low, high] = [inside("within.from", within.from), inside("within.to", within.to)];
      return normalIntervalProbability(low, high) / share;
    },
    sample: (random) => quantile(random.uniform()),
  };
}
