import type { DimensionId } from "@tapewise/landmarks";
import type { Estimate, Prior } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { Belief, Beliefs } from "./belief.ts";
import { checkPrior } from "./check-prior.ts";
import { type Joint, updatePrior } from "./update-prior.ts";

/**
 * Puts estimates and prior together (normal conjugate update).
 *
 * Without a prior an estimate stands for itself. With one, the posterior covariance Σ solves
 * Σ⁻¹ = C⁻¹ + diag(1/u²). The doubt about each u travels on: 1/νᵢ = Σⱼ (Σᵢⱼ² / (uⱼ² Σᵢᵢ))² / νⱼ, the
 * Welch–Satterthwaite argument (GUM G.4.1) applied to the posterior variance. An estimate of a dimension
 * that the prior does not speak of stays as it is, independent of the rest.
 *
 * @throws {@link InvalidArgumentError} for a prior that is no joint normal distribution, two estimates of one
 * dimension, or an estimate whose figures are not finite or whose degrees of freedom are 1 or less.
 *
 * @example
 * ```ts
 * import { formBeliefs } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const torso = parseEstimate({
 *   dimension: "torso-length",
 *   readings: [parseLength("440 mm")],
 *   error: { biasMm: 10, repeatMm: 0, resolutionMm: 0 },
 * });
 * const prior = {
 *   label: "everybody",
 *   source: "made up for this example",
 *   caveat: "none",
 *   dimensions: ["torso-length" as const],
 *   meanMm: [420],
 *   covarianceMm2: [[100]],
 * };
 * const belief = formBeliefs([torso], prior).of("torso-length");
 * [belief?.meanMm, belief?.sdMm.toFixed(2), belief?.from]; // => [430, "7.07", "readings-and-prior"]
 * ```
 */
export function formBeliefs(estimates: readonly Estimate[], prior: Prior | undefined): Beliefs {
  checkEstimates(estimates);
  if (prior !== undefined) checkPrior(prior);
  const joint = prior === undefined ? undefined : updatePrior(prior, estimates);
  const list = [
    ...estimates.filter(({ dimension }) => !joint?.dimensions.includes(dimension)).map(beliefOf),
    ...(prior === undefined || joint === undefined ? [] : updatedBeliefs(prior, joint, estimates)),
  ];
  const known = new Map(list.map((belief) => [belief.dimension, belief]));
  return {
    list,
    of: (dimension) => known.get(dimension),
    correlation: (first, second) => correlationOf(joint, first, second),
  };
}

function checkEstimates(estimates: readonly Estimate[]): void {
  const seen = new Set<DimensionId>();
  for (const { dimension, mm, uncertaintyMm, degreesOfFreedom } of estimates) {
    if (seen.has(dimension)) throw new InvalidArgumentError("estimates", dimension, "one a dimension");
    seen.add(dimension);
    if (!Number.isFinite(mm)) throw new InvalidArgumentError("estimate.mm", mm, "a finite length");
    if (!(Number.isFinite(uncertaintyMm) && uncertaintyMm >= 0)) {
      throw new InvalidArgumentError("estimate.uncertaintyMm", uncertaintyMm, "a finite length, 0 or more");
    }
    if (!(degreesOfFreedom > 1)) {
      throw new InvalidArgumentError("estimate.degreesOfFreedom", degreesOfFreedom, "above 1");
    }
  }
}

function beliefOf(estimate: Estimate): Belief {
  return {
    dimension: estimate.dimension,
    meanMm: estimate.mm,
    sdMm: estimate.uncertaintyMm,
    degreesOfFreedom: estimate.degreesOfFreedom,
    from: "readings",
    estimate,
  };
}

function updatedBeliefs(prior: Prior, joint: Joint, estimates: readonly Estimate[]): readonly Belief[] {
  return joint.dimensions.map((dimension, i): Belief => {
    const estimate = estimates.find((one) => one.dimension === dimension);
    return {
      dimension,
      meanMm: joint.meanMm[i] ?? 0,
      sdMm: Math.sqrt(Math.max(0, joint.covariance(i, i))),
      degreesOfFreedom: degreesOf(joint, i, estimates),
      from: estimate === undefined ? "prior" : "readings-and-prior",
      priorMeanMm: prior.meanMm[i] ?? 0,
      priorSdMm: Math.sqrt(prior.covarianceMm2[i]?.[i] ?? 0),
      ...(estimate === undefined ? {} : { estimate }),
    };
  });
}

function degreesOf(joint: Joint, i: number, estimates: readonly Estimate[]): number {
  const variance = joint.covariance(i, i);
  let inverse = 0;
  for (const estimate of estimates) {
    const j = joint.dimensions.indexOf(estimate.dimension);
    const own = estimate.uncertaintyMm ** 2;
    if (j < 0 || own === 0 || variance <= 0) continue;
    inverse += (joint.covariance(i, j) ** 2 / (own * variance)) ** 2 / estimate.degreesOfFreedom;
  }
  return inverse === 0 ? Number.POSITIVE_INFINITY : 1 / inverse;
}

function correlationOf(joint: Joint | undefined, first: DimensionId, second: DimensionId): number {
  if (first === second) return 1;
  const i = joint?.dimensions.indexOf(first) ?? -1;
  const j = joint?.dimensions.indexOf(second) ?? -1;
  if (joint === undefined || i < 0 || j < 0) return 0;
  const scale = Math.sqrt(joint.covariance(i, i)) * Math.sqrt(joint.covariance(j, j));
  return scale > 0 ? Math.max(-1, Math.min(1, joint.covariance(i, j) / scale)) : 0;
}
