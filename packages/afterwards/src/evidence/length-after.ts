import type { UncertainLength } from "@tapewise/fit";
import { truncatedNormal } from "@tapewise/population";
import { normalIntervalProbability } from "@tapewise/statistics";
import { checkSeen } from "./check-seen.ts";
import type { Evidence } from "./create-evidence.ts";
import { expectedMove } from "./expected-move.ts";
import { learnProduct } from "./learn-product.ts";
import { scaleFor } from "./scale-for.ts";
import type { SeenOutcome } from "./seen-outcome.ts";

/**
 * What is believed of the person's own length after an outcome: mean and standard deviation, for the next choice
 * (as a prior: see {@link priorAfter}).
 *
 * The product's range stands where `evidence` has it. With Z the length plus what the person puts up with and the
 * doubt about the offset, Z ~ N(m, σ²), σ² = u² + s² + v², the outcome says on which side of the range Z lies; the
 * length follows Z with the slope u²/σ² (moments of a truncated normal: N. L. Johnson, S. Kotz & N. Balakrishnan,
 * 1994, Continuous Univariate Distributions 1, 13.10.1). The chance that the report says nothing is mixed in. The
 * evidence may hold this very outcome, for one among many tells next to nothing.
 *
 * @throws {@link InvalidArgumentError} when the belief is not finite or its standard deviation below 0, the range is not
 * in order, or the side is none.
 *
 * @example
 * ```ts
 * import { createEvidence, lengthAfter } from "@tapewise/afterwards";
 * const after = lengthAfter(createEvidence(), {
 *   product: "Doily 45", dimension: "torso-length", fromMm: 420, toMm: 480, side: "below", meanMm: 425, sdMm: 10,
 * });
 * [after.meanMm < 425, after.sdMm < 10]; // => [true, true]
 * ```
 */
export function lengthAfter(evidence: Evidence, seen: SeenOutcome): UncertainLength {
  checkSeen(seen);
  const { dimension, meanMm, sdMm, fromMm, toMm, side } = seen;
  const scale = scaleFor(evidence.model, dimension);
  const { offsetMm, offsetSdMm, widthFactor } = expectedMove(learnProduct(evidence, seen, dimension));
  const half = Number.isFinite(fromMm) && Number.isFinite(toMm) ? (toMm - fromMm) / 2 : 0;
  const wider = half * (widthFactor - 1);
  const lower = fromMm + offsetMm - wider;
  const upper = toMm + offsetMm + wider;
  const bounds = {
    below: [Number.NEGATIVE_INFINITY, lower],
    inside: [lower, upper],
    above: [upper, Number.POSITIVE_INFINITY],
  } as const;
  const [from, to] = bounds[side];
  const sigma = Math.hypot(sdMm, scale.toleranceMm, offsetSdMm);
  const share = from < to ? normalIntervalProbability((from - meanMm) / sigma, (to - meanMm) / sigma) : 0;
  const told = (1 - evidence.model.slipProbability) * share;
  const weight = told / (told + evidence.model.slipProbability / 3);
  if (weight < NOTHING || sdMm === 0) return { meanMm, sdMm, degreesOfFreedom: Number.POSITIVE_INFINITY };
  const z = truncatedNormal({ mean: meanMm, sd: sigma, from, to });
  const slope = (sdMm / sigma) ** 2;
  const shift = slope * (z.mean - meanMm);
  const variance = sdMm ** 2 * (1 - slope) + slope ** 2 * z.variance;
  return {
    meanMm: meanMm + weight * shift,
    sdMm: Math.sqrt(weight * variance + (1 - weight) * sdMm ** 2 + weight * (1 - weight) * shift ** 2),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  };
}

/** An outcome that is next to impossible is a slip and tells nothing. */
const NOTHING = 1e-12;
