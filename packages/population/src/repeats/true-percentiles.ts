import { InvalidArgumentError } from "@tapewise/outcome";
import { normalQuantile, type QuantileType, type Random } from "@tapewise/statistics";
import { requireConfidence, requireProbability } from "../require-argument.ts";
import { bootstrapPeople } from "./bootstrap-people.ts";
import { type ObservedSpread, observeSpread, type Readings } from "./observe-spread.ts";
import { shrinkPeople } from "./shrink-people.ts";

/** A percentile of people's own values, with the error of reading taken out. */
export interface TruePercentile {
  readonly share: number;
  readonly value: number;
  /** Absent where the spread between people is estimated as 0. */
  readonly standardError?: number;
  readonly lower?: number;
  readonly upper?: number;
}

/** How to get from the spread to percentiles. */
export type TruePercentileOptions = {
  /** Probability of the interval; 0.95 where it is left out. */
  readonly confidence?: number;
} & (
  | { readonly shape: "normal" }
  | {
      readonly shape: "observed";
      readonly random: Random;
      /** How many resamples; 499 where it is left out. */
      readonly replicates?: number;
      /** Definition of the sample quantile; 8 where it is left out. */
      readonly type?: QuantileType;
    }
);

/**
 * Percentiles of people's own values from readings that carry an error. Readings spread more widely than people
 * do, so their outer percentiles lie too far out; here only the spread between people counts.
 *
 * - `shape: "normal"`: mean + z σb, with standard errors by the delta method and a normal interval.
 * - `shape: "observed"`: each person's mean is drawn towards the common mean by σb / √(σ²b + σ²w / k), so that the
 *   spread becomes σb and the shape stays that of the readings (T. A. Louis, 1984, JASA 79, 393–398); intervals from
 *   people drawn with replacement, the components estimated anew each time.
 *
 * The error is either seen in repeated readings or stated as the standard deviation of one value; a stated
 * one counts as known. `value` is the mean for all shares where the error explains all of the spread.
 *
 * @throws {@link InvalidArgumentError} when readings or error are unusable (see {@link varianceComponents}), a
 * share is not from 0 to 1 (between them for `normal`), or an option is out of range.
 *
 * @example
 * ```ts
 * import { truePercentiles } from "@tapewise/population";
 * const readings = { values: [390, 396, 401, 405, 409, 414, 420], errorSd: 6 };
 * const [p95] = truePercentiles(readings, [0.95], { shape: "normal" });
 * p95?.value.toFixed(1); // => "418.9"
 * ```
 */
export function truePercentiles(
  readings: Readings,
  shares: readonly number[],
  options: TruePercentileOptions,
): readonly TruePercentile[] {
  const { confidence = 0.95 } = options;
  requireConfidence("options.confidence", confidence);
  for (const [index, share] of shares.entries()) requireProbability(`shares[${index}]`, share);
  const spread = observeSpread(readings);
  if (options.shape === "normal") return shares.map((share) => normalPercentile(spread, share, confidence));
  if (options.shape !== "observed") {
    throw new InvalidArgumentError(
      "options.shape",
      (options as { shape: unknown }).shape,
      "normal or observed",
    );
  }
  const { random, replicates = 499, type = 8 } = options;
  const figures = shrinkPeople(spread, shares, type);
  const intervals = bootstrapPeople(spread.perPerson, spread.errorSd, {
    shares,
    type,
    random,
    replicates,
    confidence,
  });
  return shares.map((share, i) => ({ share, value: figures[i] ?? spread.mean, ...intervals[i] }));
}

function normalPercentile(spread: ObservedSpread, share: number, confidence: number): TruePercentile {
  if (share === 0 || share === 1) {
    throw new InvalidArgumentError("shares", share, "shares between 0 and 1 for a normal shape");
  }
  const z = normalQuantile(share);
  const value = spread.mean + z * spread.betweenSd;
  if (spread.betweenError === undefined) return { share, value };
  const standardError = Math.hypot(spread.meanError, z * spread.betweenError);
  const reach = normalQuantile((1 + confidence) / 2) * standardError;
  return { share, value, standardError, lower: value - reach, upper: value + reach };
}
