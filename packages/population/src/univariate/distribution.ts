import type { Interval } from "@tapewise/intervals";
import type { Random } from "@tapewise/statistics";

/** What kind of curve a distribution is. */
export type Family = "normal" | "lognormal" | "skew-normal" | "truncated-normal" | "mixture" | "empirical";

/**
 * How one quantity is distributed among people. Everything is in the unit of the quantity: a torso length in
 * millimetres has a mean and a quantile in mm and a density per mm. Each function throws
 * `InvalidArgumentError` for `NaN`.
 */
export interface Distribution {
  readonly family: Family;
  /** The figures that make this one of its family, by name. */
  readonly parameters: Readonly<Record<string, number>>;
  readonly mean: number;
  readonly sd: number;
  readonly variance: number;
  /** The third central moment over the cube of the standard deviation; 0 where there is no spread. */
  readonly skewness: number;
  /** The density at `x`. Of an empirical distribution: a smooth estimate of it. */
  density(x: number): number;
  /** The share of people at or below `x`. */
  cumulative(x: number): number;
  /** The share above `x`; keeps its digits where `1 - cumulative(x)` would lose them. */
  upperTail(x: number): number;
  /** The least value that a share `p` of people does not exceed. Throws unless `p` is from 0 to 1. */
  quantile(p: number): number;
  /** The share within an interval; whether a bound itself belongs matters for samples only. */
  probability(within: Interval): number;
  /** One person drawn at random. The same stream gives the same people. */
  sample(random: Random): number;
}
