import type { Belief } from "../belief.ts";
import {
  isHelperAnOption,
  stepOf,
  USUAL_STEP_MM,
  withFreshReadings,
  withMoreReadings,
} from "../plan-look.ts";
import type { FitPolicy } from "../policy.ts";

/**
 * The uncertainty of a belief, in mm, after each look that `recommend` would weigh: one further reading, two, and
 * so on, then as many as the policy allows by a helper. A look that is not open holds the uncertainty as it is. There
 * is always one more of them than the policy's `mostFurtherReadings`.
 *
 * @example
 * ```ts
 * import { defaultPolicy, formBeliefs, spreadsAfterLooks } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const error = { biasMm: 3, repeatMm: 4, resolutionMm: 0 };
 * const torso = parseEstimate({ dimension: "torso-length", readings: [parseLength("44 cm")], error });
 * const [belief] = formBeliefs([torso], undefined).list;
 * belief && spreadsAfterLooks(belief, defaultPolicy).map((mm) => mm.toFixed(2)); // => ["4.12", "3.79", "3.61", "5.00"]
 * ```
 */
export function spreadsAfterLooks(
  belief: Belief,
  { mostFurtherReadings: most }: FitPolicy,
): readonly number[] {
  const { estimate, sdMm } = belief;
  if (most < 1) return [sdMm];
  if (estimate === undefined) {
    const fresh = withFreshReadings(belief, "self", most, USUAL_STEP_MM);
    return Array.from({ length: most + 1 }, (_, look) => (look === 0 ? fresh : sdMm));
  }
  return [
    ...Array.from({ length: most }, (_, look) => withMoreReadings(belief, estimate, look + 1)),
    isHelperAnOption(estimate) ? withFreshReadings(belief, "helper", most, stepOf(estimate)) : sdMm,
  ];
}
