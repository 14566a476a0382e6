import type { Interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import type { Random } from "@tapewise/statistics";
import type { Millimetres } from "@tapewise/units";
import type { Distribution } from "../univariate/distribution.ts";

/** What a joint model speaks of: dimensions of the body in millimetres, and body mass in kilograms. */
export type Variable = DimensionId | "mass-kg";

/** What is known of a person: lengths in millimetres, body mass in kilograms. */
export type Known = { readonly [D in DimensionId]?: Millimetres } & { readonly "mass-kg"?: number };

/** Between which bounds people lie, in mm (kg for body mass). A variable that is not named may have any value. */
export type Box = { readonly [V in Variable]?: Interval };

/** What figures are about, for people. It goes wherever the figures go. */
export interface About {
  /** Whom they describe: "women, 171 cm tall". */
  readonly label: string;
  /** Where they come from and how they were computed. */
  readonly source: string;
  /** What they do not hold for. */
  readonly caveat: string;
}

/** A probability that was computed numerically. */
export interface BoxProbability {
  readonly probability: number;
  /** How far off it may be: a bound up to two variables, from three on an estimate (see the model's docs). */
  readonly error: number;
}

/** How several dimensions are distributed together among people. */
export interface JointModel {
  readonly kind: "normal" | "lognormal" | "mixture" | "empirical";
  readonly about: About;
  readonly variables: readonly Variable[];
  /** Means in the order of `variables`: mm, and kg for body mass. */
  readonly mean: readonly number[];
  /** Covariances in the order of `variables`: mm², kg² or mm·kg. */
  readonly covariance: readonly (readonly number[])[];
  /** One variable by itself. */
  distribution(variable: Variable): Distribution;
  /** The same people seen in fewer variables, in the order asked for. */
  marginal(variables: readonly Variable[]): JointModel;
  /** The other variables of people of whom something is known. */
  conditional(known: Known): JointModel;
  /** The logarithm of the density at what is known (of those variables alone), per mm and per kg. */
  logDensity(known: Known): number;
  /** The share of people within all the bounds. */
  boxProbability(box: Box): BoxProbability;
  /** One person at random, in the order of `variables`. The same stream gives the same people. */
  sample(random: Random): readonly number[];
}
