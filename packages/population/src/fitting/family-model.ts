import type { Distribution } from "../univariate/distribution.ts";

/** Families that can be fitted. */
export type FittedFamily = "normal" | "lognormal" | "skew-normal" | "mixture";

/** A weighted sample with the moments from which fits start. */
export interface FitSample {
  readonly values: readonly number[];
  /** They add up to the effective number of people. */
  readonly weights: readonly number[];
  readonly mean: number;
  readonly sd: number;
  readonly skewness: number;
}

/** What the fit needs to know of a family. `natural` parameters are reported; `free` ones may have any value. */
export interface FamilyModel {
  readonly names: readonly string[];
  /** Where to start from, as free parameters. */
  readonly starts: (sample: FitSample) => readonly (readonly number[])[];
  /** By how much the free parameters matter. */
  readonly freeScales: (sample: FitSample) => readonly number[];
  /** By how much the natural ones do. */
  readonly scales: (natural: readonly number[], sample: FitSample) => readonly number[];
  readonly natural: (free: readonly number[], sample: FitSample) => readonly number[];
  readonly logDensity: (natural: readonly number[]) => (x: number) => number;
  readonly distribution: (natural: readonly number[]) => Distribution;
  /** Of several ways to write the same distribution the one to be reported. */
  readonly inOrder?: (natural: readonly number[]) => readonly number[];
  /** Whether the likelihood goes on rising towards the end of what the family can do. */
  readonly isAtBoundary: (natural: readonly number[], sample: FitSample) => boolean;
}
