import { contains } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import { requireFinite, requireWeights } from "../require-argument.ts";
import { empiricalDistribution } from "../univariate/empirical.ts";
import { adjustPeople } from "./adjust-people.ts";
import type { About, Box, JointModel, Known, Variable } from "./joint-model.ts";
import { kernelLogDensity } from "./kernel-density.ts";
import {
  describeKnown,
  placeOf,
  placesBounded,
  placesKnown,
  requireAbout,
  requireVariables,
} from "./variable.ts";
import { weightedCovariance } from "./weighted-covariance.ts";

/** People as they were measured. */
export interface EmpiricalFigures {
  readonly about: About;
  readonly variables: readonly Variable[];
  /** A row for each person, in the order of `variables`: mm, and kg for body mass. */
  readonly people: readonly (readonly number[])[];
  /** A weight for each person; all alike where it is left out. */
  readonly weights?: readonly number[];
}

/** A joint model that consists of people, each with a weight. */
export interface EmpiricalJoint extends JointModel {
  readonly kind: "empirical";
  readonly people: readonly (readonly number[])[];
  /** Shares of the people; they add up to 1. */
  readonly weights: readonly number[];
  /** Kish's effective number of people: (Σw)² / Σw². */
  readonly effectivePeople: number;
  marginal(variables: readonly Variable[]): EmpiricalJoint;
  conditional(known: Known): EmpiricalJoint;
  /** Only the people within some bounds. Throws when there are none. */
  within(box: Box): EmpiricalJoint;
}

/**
 * A joint model made of measured people: no curve is assumed. `covariance` divides by the sum of the weights.
 *
 * - `conditional` moves everybody along the weighted regression on what is known, so that all have the known
 *   values and each keeps the own residual. Assumption: the regression is a straight line and the residuals
 *   spread alike everywhere. For people near a value without that assumption use `within`.
 * - `boxProbability` counts people; its `error` is the sampling error √(p (1 − p) / effective people).
 * - `logDensity` is that of a Gaussian kernel estimate with Scott's widths.
 *
 * @throws {@link InvalidArgumentError} when there is no person, a value is not finite, a row has not one value
 * for each variable, or the weights are not one number from 0 up for each person with at least one above 0.
 *
 * @example
 * ```ts
 * import { interval } from "@tapewise/intervals";
 * import { empiricalJoint } from "@tapewise/population";
 * const crew = empiricalJoint({
 *   about: { label: "an invented crew", source: "invented", caveat: "four people" },
 *   variables: ["stature", "torso-length"],
 *   people: [[1640, 405], [1700, 418], [1720, 431], [1780, 446]],
 * });
 * crew.mean; // => [1710, 425]
 * crew.boxProbability({ "torso-length": interval(410, 440) }).probability; // => 0.5
 * crew.within({ stature: interval(1700, 1800) }).people.length; // => 3
 * ```
 */
export function empiricalJoint(figures: EmpiricalFigures): EmpiricalJoint {
  const { about, variables } = figures;
  requireAbout(about);
  requireVariables("variables", variables);
  requirePeople(figures);
  const given = figures.weights ?? figures.people.map(() => 1);
  const total = given.reduce((sum, weight) => sum + weight, 0);
  const counted = figures.people
    .map((person, index) => ({ person, weight: (given[index] ?? 0) / total }))
    .filter(({ weight }) => weight > 0);
  const people = counted.map(({ person }) => person);
  const weights = counted.map(({ weight }) => weight);
  const effectivePeople = 1 / weights.reduce((sum, weight) => sum + weight * weight, 0);
  const { mean, covariance } = weightedCovariance(people, weights);

  const same = (label: string, changes: Partial<EmpiricalFigures>): EmpiricalJoint =>
    empiricalJoint({ variables, people, weights, ...changes, about: { ...about, label } });
  const column = (place: number): number[] => people.map((person) => person[place] ?? 0);

  return {
    kind: "empirical",
    about,
    variables,
    people,
    weights,
    effectivePeople,
    mean,
    covariance,
    distribution: (variable) => empiricalDistribution(column(placeOf(variables, variable)), weights),
    marginal: (wanted) => {
      const places = wanted.map((variable) => placeOf(variables, variable));
      return same(about.label, {
        variables: wanted,
        people: people.map((person) => places.map((place) => person[place] ?? 0)),
      });
    },
    conditional: (known) => {
      const places = placesKnown(variables, known);
      const open = variables.filter((variable) => known[variable] === undefined);
      if (open.length === 0) {
        throw new InvalidArgumentError("known", known, "values that leave at least one variable open");
      }
      const moved = adjustPeople(people, weights, places);
      return same(describeKnown(about.label, known), {
        variables: open,
        people: moved.map((person) => open.map((variable) => person[variables.indexOf(variable)] ?? 0)),
      });
    },
    within: (box) => {
      const bounded = placesBounded(variables, box);
      const inside = counted.filter(({ person }) =>
        bounded.every(({ place, within }) => contains(within, person[place] ?? 0)),
      );
      if (inside.length === 0) throw new InvalidArgumentError("box", box, "bounds with people between them");
      return same(`${about.label}, within bounds`, {
        people: inside.map(({ person }) => person),
        weights: inside.map(({ weight }) => weight),
      });
    },
    logDensity: (known) => {
      const places = placesKnown(variables, known);
      return kernelLogDensity(
        people.map((person) => places.map(([place]) => person[place] ?? 0)),
        weights,
        places.map(([, value]) => value),
      );
    },
    boxProbability: (box) => {
      const bounded = placesBounded(variables, box);
      const inside = counted.filter(({ person }) =>
        bounded.every(({ place, within }) => contains(within, person[place] ?? 0)),
      );
      const share = inside.reduce((sum, { weight }) => sum + weight, 0);
      const probability = inside.length === people.length ? 1 : Math.min(share, 1);
      return { probability, error: Math.sqrt((probability * (1 - probability)) / effectivePeople) };
    },
    sample: (random) => {
      let rest = random.uniform();
      const chosen = counted.find(({ weight }) => {
        rest -= weight;
        return rest < 0;
      });
      // Shares that add up to a little less than 1 leave the last person.
      return (chosen ?? counted[counted.length - 1])?.person ?? mean;
    },
  };
}

function requirePeople({ people, variables, weights }: EmpiricalFigures): void {
  if (!(Array.isArray(people) && people.length > 0)) {
    throw new InvalidArgumentError("people", people, "at least one person");
  }
  for (const [index, person] of people.entries()) {
    if (person.length !== variables.length) {
      throw new InvalidArgumentError(`people[${index}]`, person, `${variables.length} values`);
    }
    for (const [place, value] of person.entries()) requireFinite(`people[${index}][${place}]`, value);
  }
  if (weights !== undefined) requireWeights("weights", weights, people.length);
}
