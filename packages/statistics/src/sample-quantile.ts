import { InvalidArgumentError } from "@tapewise/outcome";
import { requireProbability } from "./require-argument.ts";
import { requireValues } from "./require-values.ts";

/**
 * Which definition of a sample quantile, by its number in Hyndman & Fan (1996). 1 to 3 pick or average
 * values of the sample; 4 to 9 go in straight lines between them. 2 averages at steps, 6 is the rule of
 * Weibull, 7 that of most spreadsheets, 8 is the one the authors recommend.
 */
export type QuantileType = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9;

/** What a and b are in the plotting positions (k − a) / (n + 1 − a − b) of the quantile types 4 to 9, in this order. */
export const plottingPositions: readonly (readonly [a: number, b: number])[] = [
  [0, 1],
  [0.5, 0.5],
  [0, 0],
  [1, 1],
  [1 / 3, 1 / 3],
  [3 / 8, 3 / 8],
];

/**
 * The value below which a share `p` of a sample lies, by one of the nine definitions of R. J. Hyndman &
 * Y. Fan (1996), The American Statistician 50, 361–365. In the unit of the values.
 *
 * A position that is whole but for rounding counts as whole: 0.07 of 100 values is the seventh.
 *
 * @throws {@link InvalidArgumentError} when there is no value, one is not finite, `p` is not from 0 to 1 or
 * `type` is not a whole number from 1 to 9.
 *
 * @example
 * ```ts
 * import { sampleQuantile } from "@tapewise/statistics";
 * sampleQuantile([15, 20, 35, 40, 50], 0.4, 7); // => 29
 * sampleQuantile([15, 20, 35, 40, 50], 0.4, 1); // => 20
 * ```
 */
export function sampleQuantile(values: readonly number[], p: number, type: QuantileType): number {
  requireValues("values", values);
  requireProbability("p", p);
  if (!(Number.isInteger(type) && type >= 1 && type <= 9)) {
    throw new InvalidArgumentError("type", type, "a whole number from 1 to 9");
  }
  const sorted = Float64Array.from(values).sort();
  const n = sorted.length;
  const position = positionOf(p, n, type);
  const tolerance = 4 * Number.EPSILON * Math.max(1, position);
  const rank = Math.floor(position + tolerance);
  const beyond = position - rank < tolerance ? 0 : position - rank;
  const share = shareOfNext(beyond, rank, type);
  const low = sorted[Math.min(Math.max(rank, 1), n) - 1] as number;
  const high = sorted[Math.min(Math.max(rank + 1, 1), n) - 1] as number;
  if (share === 0 || low === high) return low;
  if (share === 1) return high;
  return Math.min(Math.max((1 - share) * low + share * high, low), high);
}

/** The place among the sorted values, counted from 1, not yet rounded. */
function positionOf(p: number, n: number, type: QuantileType): number {
  const plotting = plottingPositions[type - 4];
  if (plotting === undefined) return type === 3 ? n * p - 0.5 : n * p;
  const [a, b] = plotting;
  return a + p * (n + 1 - a - b);
}

/** How much the next value counts against the one at `rank`. */
function shareOfNext(beyond: number, rank: number, type: QuantileType): number {
  if (type > 3) return beyond;
  if (beyond > 0) return 1;
  if (type === 1) return 0;
  if (type === 2) return 0.5;
  return rank % 2 === 0 ? 0 : 1;
}
