import { InvalidArgumentError } from "@tapewise/outcome";
import { type EmpiricalJoint, empiricalJoint } from "./empirical-joint.ts";
import { entry, factor, pick, solveFactored } from "./gaussian.ts";
import type { About, Known, Variable } from "./joint-model.ts";
import { type NormalJoint, normalJoint } from "./normal-joint.ts";
import { placeOf } from "./variable.ts";

/**
 * The same people with another distribution of some variables, for instance the stature and body mass of a
 * general public instead of a survey's.
 *
 * Assumption, written into the result's caveat: among people of the same value of those variables, the other
 * dimensions are distributed as in `model`. Whatever else differs between the two populations stays.
 *
 * - A joint normal model: with the regression B = Σₒₖ Σₖₖ⁻¹ of the others on the named ones, the others get mean
 *   μₒ + B (μ′ − μₖ) and covariance Σₒₒ − B Σₖₖ Bᵀ + B Σ′ Bᵀ (Pearson–Lawley selection formulae).
 * - An empirical model: each person's weight is multiplied by the ratio of the densities, target over the normal
 *   one fitted to the people. `effectivePeople` then tells how many are left in effect; few mean that the
 *   survey hardly has such people.
 *
 * @throws {@link InvalidArgumentError} when the target names a variable that the model does not have, or the
 * named variables determine each other.
 *
 * @example
 * ```ts
 * import { normalJoint, referencePopulation, reweight } from "@tapewise/population";
 * const invented = normalJoint({
 *   about: { label: "an invented public", source: "invented", caveat: "for this example only" },
 *   variables: ["stature", "mass-kg"],
 *   mean: [1620, 76],
 *   covariance: [
 *     [4900, 350],
 *     [350, 300],
 *   ],
 * });
 * const women = reweight(referencePopulation("women"), invented);
 * women.distribution("mass-kg").mean; // => 76
 * women.about.caveat.includes("Assumption"); // => true
 * ```
 */
export function reweight(model: NormalJoint, target: NormalJoint): NormalJoint;
export function reweight(model: EmpiricalJoint, target: NormalJoint): EmpiricalJoint;
export function reweight(
  model: NormalJoint | EmpiricalJoint,
  target: NormalJoint,
): NormalJoint | EmpiricalJoint {
  const places = target.variables.map((variable) => placeOf(model.variables, variable));
  const about = aboutBoth(model.about, target);
  return model.kind === "normal"
    ? reweightNormal(model, target, places, about)
    : reweightPeople(model, target, places, about);
}

function aboutBoth(about: About, target: NormalJoint): About {
  const given = target.variables.map((variable) => variable.replaceAll("-", " ")).join(" and ");
  return {
    label: `${about.label}, re-weighted to ${target.about.label}`,
    source: `${about.source}; re-weighted to ${target.about.source}`,
    caveat:
      `${about.caveat} Assumption: people of the same ${given} are as in the first source. ${target.about.caveat}`.trim(),
  };
}

function reweightNormal(
  model: NormalJoint,
  target: NormalJoint,
  places: readonly number[],
  about: About,
): NormalJoint {
  const { variables } = model;
  const named = pick(model.covariance, places);
  const lower = factor(named);
  if (lower === undefined || !lower.every((row, i) => (row[i] ?? 0) > 0)) {
    const expected = "variables that do not determine each other";
    throw new InvalidArgumentError("target", target.variables.join(", "), expected);
  }
  // Row i holds the slopes of variable i on the named ones: B with B Σₖₖ = Σₒₖ.
  const slopes = model.covariance.map((row) =>
    solveFactored(
      lower,
      places.map((place) => row[place] ?? 0),
    ),
  );
  const excess = target.mean.map((value, k) => value - (model.mean[places[k] ?? 0] ?? 0));
  const change = target.covariance.map((row, k) => row.map((value, l) => value - entry(named, k, l)));
  const mean = model.mean.map((value, i) => value + dot(slopes[i], excess));
  // The named variables have exactly what the target says.
  for (const [k, place] of places.entries()) mean[place] = target.mean[k] ?? 0;
  const rows = model.covariance.map((row, i) =>
    row.map(
      (value, j) =>
        value +
        dot(
          slopes[i],
          change.map((changes) => dot(slopes[j], changes)),
        ),
    ),
  );
  return normalJoint({
    about,
    variables,
    mean,
    covariance: rows.map((row, i) => row.map((value, j) => (value + entry(rows, j, i)) / 2)),
  });
}

function dot(some: readonly number[] | undefined, others: readonly number[]): number {
  return others.reduce((sum, value, k) => sum + value * (some?.[k] ?? 0), 0);
}

function reweightPeople(
  model: EmpiricalJoint,
  target: NormalJoint,
  places: readonly number[],
  about: About,
): EmpiricalJoint {
  const { variables } = target;
  const fitted = normalJoint({
    about,
    variables,
    mean: places.map((place) => model.mean[place] ?? 0),
    covariance: pick(model.covariance, places),
  });
  const logs = model.people.map((person) => {
    const known = Object.fromEntries(
      variables.map((variable: Variable, k) => [variable, person[places[k] ?? 0] ?? 0]),
    ) as Known;
    return target.logDensity(known) - fitted.logDensity(known);
  });
  const highest = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return empiricalJoint({
    about,
    variables: model.variables,
    people: model.people,
    weights: model.weights.map((weight, n) => weight * Math.exp((logs[n] ?? highest) - highest)),
  });
}
