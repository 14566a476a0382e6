import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { entry, factor, pick } from "../joint/gaussian.ts";
import type { JointModel, Known, Variable } from "../joint/joint-model.ts";
import { placeOf, requireVariables } from "../joint/variable.ts";
import { requireFinite } from "../require-argument.ts";

/** Which dimensions a prior is to speak of. */
export interface PriorFromOptions {
  /** All open ones of the model where it is left out. */
  readonly dimensions?: readonly DimensionId[];
  /**
   * What the person's readings show more than the model's figures, in mm. For a torso read along the spine and the
   * straight one of the reference survey that is `meanCurveSurplusMm` of @tapewise/landmarks.
   */
  readonly surplusMm?: { readonly [D in DimensionId]?: number };
}

/** A known value further than this from the mean, in standard deviations, is beyond those who were measured. */
const BEYOND = 3.5;

/**
 * What a model says of a person of whom something is known, as the prior that a choice of size starts from: a
 * population, a cut, a stature, any other dimension, body mass, or an own survey.
 *
 * A prior is joint normal. Of a lognormal model, a mixture or measured people it takes means and covariances
 * given what is known. A dimension that those before it determine (torso length, once both heights are in it)
 * would make the covariances singular and is left out. Known values count as exact. The caveat tells when one
 * lies so far out that the answer is extrapolated, and what was added to which dimension.
 *
 * @throws {@link InvalidArgumentError} when the model lacks a known or a wanted dimension, a wanted one is known,
 * or none is left.
 *
 * @example
 * ```ts
 * import { priorFrom, referencePopulation } from "@tapewise/population";
 * import { millimetres } from "@tapewise/units";
 * const known = { stature: millimetres(1710), "shoulder-breadth": millimetres(380) };
 * const prior = priorFrom(referencePopulation("women"), known, { dimensions: ["torso-length"] });
 * prior.label; // => "women, stature 1710 mm, shoulder breadth 380 mm"
 * prior.meanMm[0]?.toFixed(0); // => "417"
 * ```
 */
export function priorFrom(model: JointModel, known: Known, options: PriorFromOptions = {}): Prior {
  const isAnything = Object.values(known).some((value) => value !== undefined);
  const given = isAnything ? model.conditional(known) : model;
  const open = given.variables.filter((variable) => variable !== "mass-kg");
  const wanted: readonly Variable[] = options.dimensions ?? open;
  requireVariables("dimensions", wanted);
  const places = wanted.map((variable) => placeOf(given.variables, variable));
  const dimensions: DimensionId[] = [];
  const kept: number[] = [];
  for (const place of places) {
    const dimension = dimensionIds.find((id) => id === given.variables[place]);
    const lower = factor(pick(given.covariance, [...kept, place]));
    const last = lower?.[kept.length]?.[kept.length] ?? 0;
    if (dimension === undefined || !(last > 0)) continue;
    kept.push(place);
    dimensions.push(dimension);
  }
  if (kept.length === 0)
    throw new InvalidArgumentError("dimensions", wanted.join(", "), "a dimension that varies");
  const surplusMm = dimensions.map((dimension) => options.surplusMm?.[dimension] ?? 0);
  for (const [i, surplus] of surplusMm.entries()) requireFinite(`surplusMm["${dimensions[i]}"]`, surplus);
  const added = surplusMm.flatMap((surplus, i) =>
    surplus === 0 ? [] : [`${surplus} mm added to ${dimensions[i]}.`],
  );
  const { label, source, caveat } = given.about;
  return {
    label,
    source,
    caveat: [caveat, ...farOut(model, known), ...added].join(" ").trim(),
    dimensions,
    meanMm: kept.map((place, i) => (given.mean[place] ?? 0) + (surplusMm[i] ?? 0)),
    covarianceMm2: kept.map((i) => kept.map((j) => entry(given.covariance, Math.min(i, j), Math.max(i, j)))),
  };
}

/** A sentence for each known value that lies beyond those whom the model describes. */
function farOut(model: JointModel, known: Known): readonly string[] {
  const entries = Object.entries(known) as [Variable, number | undefined][];
  return entries.flatMap(([variable, value]) => {
    const { mean, sd } = model.distribution(variable);
    if (value === undefined || Math.abs(value - mean) <= BEYOND * sd) return [];
    return [`The ${variable.replaceAll("-", " ")} lies beyond nearly all who were measured: extrapolated.`];
  });
}
