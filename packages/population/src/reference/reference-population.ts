import { entry } from "../joint/gaussian.ts";
import { type NormalJoint, normalJoint } from "../joint/normal-joint.ts";
import { measuredVariables, REFERENCE_CAVEAT, REFERENCE_SOURCE } from "./definitions.ts";
import { figuresOf, type ReferenceCut } from "./figures-of.ts";
import type { ReferenceVariable } from "./reference-figures.ts";

/**
 * The women or the men of the reference survey as a joint normal model of thirteen dimensions and body mass:
 * ANSUR II, 990 women or 2,040 men. `about` names the source and what the figures do not hold for, and goes
 * on to whatever is made of the model.
 *
 * Torso length is cervicale height less iliac-crest height of each person, so any two of the three give the
 * third. The model is joint normal by assumption: lengths and breadths come close to it, girths and body mass
 * have a longer right tail (see {@link withLognormal}, and {@link referenceTable} for quantiles as they are).
 *
 * @throws {@link InvalidArgumentError} for a cut other than women or men.
 *
 * @example
 * ```ts
 * import { interval } from "@tapewise/intervals";
 * import { referencePopulation } from "@tapewise/population";
 * import { millimetres } from "@tapewise/units";
 * const women = referencePopulation("women");
 * const tall = women.conditional({ stature: millimetres(1710) }).distribution("torso-length");
 * tall.mean.toFixed(0); // => "417"
 * women.boxProbability({ "torso-length": interval(380, 430) }).probability.toFixed(3); // => "0.718"
 * ```
 */
export function referencePopulation(cut: ReferenceCut): NormalJoint {
  const figures = figuresOf(cut);
  const measured = (variable: ReferenceVariable): number => measuredVariables.indexOf(variable);
  /** Each variable as a sum of measured ones with a sign. */
  const terms = (variable: ReferenceVariable): readonly (readonly [place: number, sign: number])[] =>
    variable === "torso-length"
      ? [
          [measured("cervicale-height"), 1],
          [measured("iliac-crest-height"), -1],
        ]
      : [[measured(variable), 1]];
  const variables: readonly ReferenceVariable[] = ["torso-length", ...measuredVariables];
  const own = (i: number, j: number): number => entry(figures.covariance, Math.max(i, j), Math.min(i, j));
  return normalJoint({
    about: { label: cut, source: REFERENCE_SOURCE, caveat: REFERENCE_CAVEAT },
    variables,
    mean: variables.map((variable) =>
      terms(variable).reduce((sum, [place, sign]) => sum + sign * (figures.mean[place] ?? 0), 0),
    ),
    covariance: variables.map((a) =>
      variables.map((b) => {
        const products = terms(a).flatMap(([i, signI]) =>
          terms(b).map(([j, signJ]) => signI * signJ * own(i, j)),
        );
        return products.reduce((sum, product) => sum + product, 0);
      }),
    ),
  });
}
