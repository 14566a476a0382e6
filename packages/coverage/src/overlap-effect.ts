import { interval } from "@tapewise/intervals";
import type { DimensionId } from "@tapewise/landmarks";
import { anticipateUncertainty } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { JointModel } from "@tapewise/population";
import type { Measuring } from "./choice-errors.ts";
import { tallyAlong } from "./choice-tally.ts";
import { requireCount, requireLength, requirePositive } from "./require-argument.ts";

/** A row of sizes that overlap, and who measures. */
export interface OverlapRequest {
  readonly population: JointModel;
  readonly dimension: DimensionId;
  readonly count: number;
  readonly spanMm: number;
  /** By how much neighbours overlap: each is tried. */
  readonly overlapsMm: readonly number[];
  readonly measuring: Measuring;
  /** The row begins at a whole multiple of this; 1 mm where it is left out. */
  readonly stepMm?: number;
}

/** What one overlap comes to. */
export interface OverlapEffect {
  readonly overlapMm: number;
  /** Where the row best begins. */
  readonly fromMm: number;
  /** Where it ends. */
  readonly toMm: number;
  /** People within a size. */
  readonly served: number;
  /** People who are given a size that does not fit although another would. */
  readonly wrong: number;
  /** People who are given a size that fits: `served` less `wrong`. */
  readonly right: number;
}

/**
 * What overlap between neighbouring sizes costs and brings: a row of `count` sizes of one span reaches less far the
 * more they overlap, and fewer people who measure themselves are given a size that does not fit. The row is laid
 * where it serves most.
 *
 * @throws {@link InvalidArgumentError} when a number is no count or length, an overlap is not below the span, or the
 * measuring leaves no uncertainty.
 *
 * @example
 * ```ts
 * import { overlapEffect } from "@tapewise/coverage";
 * import { referencePopulation } from "@tapewise/population";
 * const [touching, overlapping] = overlapEffect({
 *   population: referencePopulation("women"),
 *   dimension: "torso-length",
 *   count: 3,
 *   spanMm: 60,
 *   overlapsMm: [0, 20],
 *   measuring: { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 },
 * });
 * (overlapping?.wrong ?? 1) < (touching?.wrong ?? 0); // => true
 * (overlapping?.served ?? 1) < (touching?.served ?? 0); // => true
 * ```
 */
export function overlapEffect(request: OverlapRequest): readonly OverlapEffect[] {
  const { population, dimension, count, spanMm, overlapsMm, measuring, stepMm = 1 } = request;
  requireCount("count", count, 1);
  requirePositive("spanMm", spanMm);
  requirePositive("stepMm", stepMm);
  const distribution = population.distribution(dimension);
  const { conditions, readings, stepMm: readingStepMm, defaults } = measuring;
  const uncertaintyMm = anticipateUncertainty({
    dimension,
    lengthMm: distribution.mean,
    count: readings,
    stepMm: readingStepMm,
    conditions,
    ...(defaults === undefined ? {} : { defaults }),
  });
  if (!(uncertaintyMm > 0))
    throw new InvalidArgumentError("measuring", uncertaintyMm, "an uncertainty above 0");
  return overlapsMm.map((overlapMm) => {
    requireLength("overlapsMm", overlapMm);
    if (overlapMm >= spanMm) throw new InvalidArgumentError("overlapsMm", overlapMm, "less than the span");
    const reach = count * spanMm - (count - 1) * overlapMm;
    const first = Math.floor((distribution.quantile(1e-6) - reach) / stepMm);
    const last = Math.ceil(distribution.quantile(1 - 1e-6) / stepMm);
    let best = { fromMm: first * stepMm, served: -1 };
    for (let k = first; k <= last; k += 1) {
      const fromMm = k * stepMm;
      const served = distribution.probability(interval(fromMm, fromMm + reach));
      if (served > best.served) best = { fromMm, served };
    }
    const sizes = Array.from({ length: count }, (_, n) => {
      const from = best.fromMm + n * (spanMm - overlapMm);
      const main = interval(from, from + spanMm);
      // Names in the order of the sizes, so that what is equal in all else goes to the smaller one.
      return { name: String.fromCharCode(65 + n), main, box: { [dimension]: main } };
    });
    const { wrong } = tallyAlong(distribution, dimension, uncertaintyMm, sizes);
    const { fromMm, served } = best;
    return { overlapMm, fromMm, toMm: fromMm + reach, served, wrong, right: Math.max(0, served - wrong) };
  });
}
