import type { UncertainLength } from "@tapewise/fit";
import type { DimensionId } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";

/**
 * What is believed of a length as a prior for the next choice. The readings are in it already: give `recommend` no
 * estimate from the same readings again.
 *
 * @throws {@link InvalidArgumentError} when the mean is not finite or the standard deviation not above 0.
 *
 * @example
 * ```ts
 * import { priorAfter } from "@tapewise/afterwards";
 * const prior = priorAfter("torso-length", { meanMm: 431, sdMm: 6, degreesOfFreedom: Infinity });
 * [prior.meanMm, prior.covarianceMm2]; // => [[431], [[36]]]
 * ```
 */
export function priorAfter(dimension: DimensionId, length: UncertainLength): Prior {
  const { meanMm, sdMm } = length;
  if (!Number.isFinite(meanMm)) throw new InvalidArgumentError("meanMm", meanMm, "a finite length");
  if (!(Number.isFinite(sdMm) && sdMm > 0)) throw new InvalidArgumentError("sdMm", sdMm, "above 0");
  return {
    label: "this person, by earlier readings and packs",
    source: "the person's own readings and what became of the packs that were chosen by them",
    caveat: "It holds for this person only, and the readings are in it already.",
    dimensions: [dimension],
    meanMm: [meanMm],
    covarianceMm2: [[sdMm ** 2]],
  };
}
