import type { Random } from "@tapewise/statistics";
import { requireCount, requireSample } from "../require-argument.ts";
import type { Distribution } from "../univariate/distribution.ts";
import { empiricalDistribution } from "../univariate/empirical.ts";
import { lognormalDistribution } from "../univariate/lognormal.ts";
import { normalDistribution } from "../univariate/normal.ts";
import { type Fit, fitDistribution } from "./fit-distribution.ts";

/** How well a fitted distribution goes with its sample. */
export interface GoodnessOfFit {
  /** Anderson and Darling's A². */
  readonly statistic: number;
  /** A² (1 + 0.75/n + 2.25/n²), which the tables for a normal fit are made for. */
  readonly adjusted: number;
  /** The chance of a worse A² if the family were right and its parameters were fitted as these were. */
  readonly pValue: number;
  /** Whether the p-value comes from the tables for a normal fit or from simulated samples. */
  readonly basis: "table" | "simulation";
  readonly people: number;
}

/** How the p-value is simulated where there is no table. */
export interface AndersonDarlingOptions {
  readonly random: Random;
  /** How many samples; 199 where it is left out. */
  readonly replicates?: number;
}

/**
 * The critical values of the adjusted A² for a normal distribution of which both mean and standard deviation
 * were fitted: M. A. Stephens in D'Agostino & Stephens (1986), Goodness-of-Fit Techniques, table 4.7.
 */
export const andersonDarlingCriticalValues: readonly { readonly level: number; readonly value: number }[] = [
  { level: 0.1, value: 0.631 },
  { level: 0.05, value: 0.752 },
  { level: 0.025, value: 0.873 },
  { level: 0.01, value: 1.035 },
];

/**
 * Anderson and Darling's test of a fit that was made from this very sample: A² weighs the tails, which matter
 * for the outermost sizes.
 *
 * - `normal` and `lognormal` fits: the p-value of D'Agostino & Stephens (1986, table 4.9) for fitted parameters;
 *   the one for known parameters would be far too large.
 * - `skew-normal` and `mixture` fits have no table: samples are drawn from the fit and fitted anew (parametric
 *   bootstrap), so `options.random` is needed; (1 + worse) / (1 + replicates) is the p-value.
 *
 * The sample must be unweighted: the distribution of A² is unknown for weighted people. With thousands of people
 * the test rejects differences that matter to nobody; look at {@link qqPoints} too.
 *
 * @throws {@link InvalidArgumentError} when there are fewer than eight values, one is not finite, or there is
 * nothing to simulate with.
 *
 * @example
 * ```ts
 * import { andersonDarling, fitDistribution } from "@tapewise/population";
 * const torsos = [402, 388, 415, 397, 421, 409, 393, 404, 411, 400];
 * const test = andersonDarling(torsos, fitDistribution("normal", torsos));
 * test.statistic.toFixed(3); // => "0.100"
 * test.pValue > 0.9; // => true
 * ```
 */
export function andersonDarling(
  values: readonly number[],
  fit: Fit,
  options?: AndersonDarlingOptions,
): GoodnessOfFit {
  requireSample("values", values, 8);
  const statistic = andersonDarlingStatistic(values, fittedForTest(values, fit));
  const n = values.length;
  const adjusted = statistic * (1 + 0.75 / n + 2.25 / n ** 2);
  const common = { statistic, adjusted, people: n };
  if (fit.family === "normal" || fit.family === "lognormal") {
    return { ...common, pValue: normalPValue(adjusted), basis: "table" };
  }
  const replicates = options?.replicates ?? 199;
  requireCount("options.replicates", options === undefined ? 0 : replicates, 1);
  let worse = 0;
  for (let i = 0; i < replicates && options !== undefined; i += 1) {
    const random = options.random.fork(i);
    const drawn = values.map(() => fit.distribution.sample(random));
    const refitted = fitDistribution(fit.family, drawn);
    if (andersonDarlingStatistic(drawn, refitted.distribution) >= statistic) worse += 1;
  }
  return { ...common, pValue: (1 + worse) / (1 + replicates), basis: "simulation" };
}

/** The tables take the standard deviation that divides by n − 1. */
function fittedForTest(values: readonly number[], fit: Fit): Distribution {
  if (fit.family !== "normal" && fit.family !== "lognormal") return fit.distribution;
  const logged = fit.family === "lognormal";
  const { mean, variance } = empiricalDistribution(logged ? values.map(Math.log) : values);
  const sd = Math.sqrt((variance * values.length) / (values.length - 1));
  return logged ? lognormalDistribution({ meanLog: mean, sdLog: sd }) : normalDistribution({ mean, sd });
}

/** −n − Σ (2i − 1) (ln F(xᵢ) + ln (1 − F(xₙ₊₁₋ᵢ))) / n. */
function andersonDarlingStatistic(values: readonly number[], distribution: Distribution): number {
  const sorted = [...values].sort((a, b) => a - b);
  const n = sorted.length;
  const below = sorted.map((x) => Math.log(distribution.cumulative(x)));
  const above = sorted.map((x) => Math.log(distribution.upperTail(x)));
  let sum = 0;
  for (let i = 0; i < n; i += 1) sum += (2 * i + 1) * ((below[i] ?? 0) + (above[n - 1 - i] ?? 0));
  return -n - sum / n;
}

/** D'Agostino & Stephens (1986), table 4.9. */
function normalPValue(a: number): number {
  if (a >= 13) return 0;
  if (a >= 0.6) return Math.exp(1.2937 - 5.709 * a + 0.0186 * a * a);
  if (a > 0.34) return Math.exp(0.9177 - 4.279 * a - 1.38 * a * a);
  if (a > 0.2) return 1 - Math.exp(-8.318 + 42.796 * a - 59.938 * a * a);
  return 1 - Math.exp(-13.436 + 101.14 * a - 223.73 * a * a);
}
