import { type MixtureJoint, mixtureJoint } from "../joint/mixture-joint.ts";
import type { ReferenceCut } from "./figures-of.ts";
import { referencePopulation } from "./reference-population.ts";

/**
 * People of the reference survey whose sex is not known, with the stated shares of women and men. A known
 * stature or girth then also tells how likely the person is a woman or a man.
 *
 * @throws {@link InvalidArgumentError} when a share is below 0 or not finite, or both are 0.
 *
 * @example
 * ```ts
 * import { referenceMixture } from "@tapewise/population";
 * const everybody = referenceMixture({ women: 1, men: 1 });
 * everybody.distribution("torso-length").mean.toFixed(1); // => "427.6"
 * ```
 */
export function referenceMixture(shares: Readonly<Record<ReferenceCut, number>>): MixtureJoint {
  const women = referencePopulation("women");
  return mixtureJoint({
    about: { ...women.about, label: "adults of unknown sex" },
    parts: [
      { weight: shares.women, model: women },
      { weight: shares.men, model: referencePopulation("men") },
    ],
  });
}
