import { InvalidArgumentError } from "@tapewise/outcome";
import { requireProbability, requireWeights } from "../require-argument.ts";
import type { Distribution } from "./distribution.ts";
import { solveQuantile } from "./solve-quantile.ts";

/** One kind of people in a mixture. */
export interface MixturePart {
  /** How many there are of this kind, in any measure: only the ratio to the other weights counts. */
  readonly weight: number;
  readonly distribution: Distribution;
}

/**
 * People of several kinds, of whom it is not known which is which: women and men where the sex is unknown. The
 * density is the weighted mean of the parts' densities.
 *
 * @throws {@link InvalidArgumentError} when there is no part, a weight is below 0 or not finite, or all are 0.
 *
 * @example
 * ```ts
 * import { mixtureDistribution, normalDistribution } from "@tapewise/population";
 * const women = normalDistribution({ mean: 400, sd: 22.7 });
 * const men = normalDistribution({ mean: 455, sd: 25.1 });
 * const everybody = mixtureDistribution([
 *   { weight: 1, distribution: women },
 *   { weight: 1, distribution: men },
 * ]);
 * everybody.mean; // => 427.5
 * everybody.sd.toFixed(1); // => "36.5"
 * ```
 */
export function mixtureDistribution(parts: readonly MixturePart[]): Distribution {
  if (!(Array.isArray(parts) && parts.length > 0)) {
    throw new InvalidArgumentError("parts", parts, "at least one part");
  }
  const weights = parts.map((part) => part.weight);
  requireWeights("weights", weights, parts.length);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const kinds = parts
    .filter((part) => part.weight > 0)
    .map((part) => ({ share: part.weight / total, of: part.distribution }));
  const over = (f: (distribution: Distribution) => number): number =>
    kinds.reduce((sum, { share, of }) => sum + share * f(of), 0);

  const mean = over((part) => part.mean);
  const variance = over((part) => part.variance + (part.mean - mean) ** 2);
  const third = over((part) => {
    const apart = part.mean - mean;
    return part.skewness * part.sd ** 3 + 3 * apart * part.variance + apart ** 3;
  });
  const sd = Math.sqrt(variance);
  const curve = {
    density: (x: number) => over((part) => part.density(x)),
    cumulative: (x: number) => over((part) => part.cumulative(x)),
    upperTail: (x: number) => over((part) => part.upperTail(x)),
  };
  return {
    family: "mixture",
    parameters: Object.fromEntries(kinds.map(({ share }, index) => [`share${index + 1}`, share])),
    mean,
    sd,
    variance,
    skewness: sd > 0 ? third / sd ** 3 : 0,
    ...curve,
    quantile: (p) => {
      requireProbability("p", p);
      // The quantile of a mixture lies between those of its parts.
      const ends = kinds.map(({ of }) => of.quantile(p));
      const from = Math.min(...ends);
      const to = Math.max(...ends);
      if (from === to) return from;
      return solveQuantile({ ...curve, from, to, start: from + (to - from) / 2, step: sd }, p);
    },
    probability: (within) => over((part) => part.probability(within)),
    sample: (random) => {
      let rest = random.uniform();
      const kind = kinds.find(({ share }) => {
        rest -= share;
        return rest < 0;
      });
      // Shares that add up to a little less than 1 leave the last kind.
      return (kind ?? kinds[kinds.length - 1])?.of.sample(random) ?? mean;
    },
  };
}
