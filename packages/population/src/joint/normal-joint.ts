import type { Interval } from "@tapewise/intervals";
import { InvalidArgumentError } from "@tapewise/outcome";
import type { Random } from "@tapewise/statistics";
import { normalBox } from "../box/normal-box.ts";
import type { Distribution } from "../univariate/distribution.ts";
import { empiricalDistribution } from "../univariate/empirical.ts";
import { normalDistribution } from "../univariate/normal.ts";
import { diagonal, entry, factor, type Gaussian, learn, pick } from "./gaussian.ts";
import type { About, BoxProbability, JointModel, Known, Variable } from "./joint-model.ts";
import {
  describeKnown,
  placeOf,
  placesBounded,
  placesKnown,
  requireAbout,
  requireVariables,
} from "./variable.ts";

/** The figures of a joint normal model. */
export interface NormalFigures {
  readonly about: About;
  readonly variables: readonly Variable[];
  /** Means in the order of `variables`: mm, and kg for body mass. */
  readonly mean: readonly number[];
  /** Covariances in the order of `variables`. A variable may be a sum or a difference of others. */
  readonly covariance: readonly (readonly number[])[];
}

/** Dimensions that are jointly normal. */
export interface NormalJoint extends JointModel {
  readonly kind: "normal";
  marginal(variables: readonly Variable[]): NormalJoint;
  conditional(known: Known): NormalJoint;
}

/**
 * A joint normal model from means and covariances.
 *
 * - `conditional` is exact: mean μ₁ + Σ₁₂ Σ₂₂⁻¹ (x − μ₂), covariance Σ₁₁ − Σ₁₂ Σ₂₂⁻¹ Σ₂₁. Where some known
 *   values follow from others (torso length from the heights of C7 and crest) they must agree.
 * - `boxProbability` is exact to 10⁻¹⁵ for one and two variables, good to 10⁻⁹ for three, and from four on an
 *   average over lattice points with an error estimate, see {@link normalBoxProbability}.
 *
 * @throws {@link InvalidArgumentError} when the variables are not different, the figures not finite or not
 * of one size, or the covariances no covariance matrix. The model's functions throw for a variable that it
 * does not have, and `conditional` when nothing or everything is known, or known values contradict each other.
 *
 * @example
 * ```ts
 * import { normalJoint } from "@tapewise/population";
 * import { millimetres } from "@tapewise/units";
 * const model = normalJoint({
 *   about: { label: "an invented crew", source: "invented", caveat: "for this example only" },
 *   variables: ["stature", "torso-length"],
 *   mean: [1700, 430],
 *   covariance: [
 *     [3600, 750],
 *     [750, 625],
 *   ],
 * });
 * const tall = model.conditional({ stature: millimetres(1760) });
 * tall.mean; // => [442.5]
 * tall.covariance; // => [[468.75]]
 * ```
 */
export function normalJoint(figures: NormalFigures): NormalJoint {
  const { about, variables, mean, covariance } = figures;
  requireAbout(about);
  requireVariables("variables", variables);
  const lower = requireFigures(figures);
  const deviations = diagonal(covariance).map(Math.sqrt);

  const after = (known: Known): { state: Gaussian; logDensity: number } => {
    const state = { mean: [...mean], covariance: covariance.map((row) => [...row]) };
    const scale = diagonal(covariance);
    let logDensity = 0;
    for (const [place, value] of placesKnown(variables, known)) {
      const surprise = value - (state.mean[place] ?? 0);
      const variance = learn(state, place, value, scale);
      if (variance > 0) logDensity -= (surprise ** 2 / variance + Math.log(2 * Math.PI * variance)) / 2;
    }
    return { state, logDensity };
  };

  const remaining = (state: Gaussian, places: readonly number[], label: string): NormalJoint =>
    normalJoint({
      about: { ...about, label },
      variables: places.map((place) => variables[place] as Variable),
      mean: places.map((place) => state.mean[place] ?? 0),
      covariance: pick(state.covariance, places),
    });

  return {
    kind: "normal",
    about,
    variables,
    mean,
    covariance,
    distribution: (variable): Distribution => {
      const place = placeOf(variables, variable);
      const sd = deviations[place] ?? 0;
      const centre = mean[place] ?? 0;
      // Everybody is alike where the variable is determined.
      return sd > 0 ? normalDistribution({ mean: centre, sd }) : empiricalDistribution([centre]);
    },
    marginal: (wanted) => {
      requireVariables("variables", wanted);
      const places = wanted.map((variable) => placeOf(variables, variable));
      return remaining(
        { mean: [...mean], covariance: pick(covariance, allPlaces(variables)) },
        places,
        about.label,
      );
    },
    conditional: (known) => {
      const { state } = after(known);
      const places = allPlaces(variables).filter(
        (place) => known[variables[place] as Variable] === undefined,
      );
      if (places.length === 0) {
        throw new InvalidArgumentError("known", known, "values that leave at least one variable open");
      }
      return remaining(state, places, describeKnown(about.label, known));
    },
    logDensity: (known) => after(known).logDensity,
    boxProbability: (box): BoxProbability => {
      const bounded = placesBounded(variables, box);
      if (!bounded.every(({ place, within }) => admits(within, mean[place] ?? 0, deviations[place] ?? 0))) {
        return { probability: 0, error: 0 };
      }
      const free = bounded.filter(({ place }) => (deviations[place] ?? 0) > 0);
      const standard = (bound: number, place: number): number =>
        (bound - (mean[place] ?? 0)) / (deviations[place] ?? 1);
      return normalBox(
        free.map(({ place, within }) => standard(within.from, place)),
        free.map(({ place, within }) => standard(within.to, place)),
        correlationOf(
          pick(
            covariance,
            free.map(({ place }) => place),
          ),
        ),
      );
    },
    sample: (random: Random): readonly number[] => {
      const draws = variables.map(() => random.normal());
      return mean.map((centre, i) => draws.reduce((sum, draw, j) => sum + entry(lower, i, j) * draw, centre));
    },
  };
}

/** Whether a variable without any spread may lie where it lies. */
function admits(within: Interval, centre: number, deviation: number): boolean {
  return deviation > 0 || (within.from <= centre && centre <= within.to);
}

function allPlaces(variables: readonly Variable[]): number[] {
  return variables.map((_, place) => place);
}

/** The correlations that belong to covariances. */
function correlationOf(covariance: readonly (readonly number[])[]): number[][] {
  const deviations = diagonal(covariance).map(Math.sqrt);
  return covariance.map((row, i) =>
    row.map((value, j) => {
      if (i === j) return 1;
      const ratio = value / ((deviations[i] ?? 1) * (deviations[j] ?? 1));
      return Math.min(Math.max(ratio, -1), 1);
    }),
  );
}

/** Refuses figures that make no joint normal distribution; returns the factor of their covariances. */
function requireFigures({ variables, mean, covariance }: NormalFigures): number[][] {
  const size = variables.length;
  if (!(mean.length === size && mean.every(Number.isFinite))) {
    throw new InvalidArgumentError("mean", mean, "a finite mean for each variable");
  }
  const isSquare = covariance.length === size && covariance.every((row) => row.length === size);
  if (!(isSquare && covariance.flat().every(Number.isFinite))) {
    throw new InvalidArgumentError("covariance", covariance, "a row of finite numbers for each variable");
  }
  const isSymmetric = covariance.every((row, i) =>
    row.every((value, j) => {
      const bound = Math.sqrt(Math.abs(entry(covariance, i, i) * entry(covariance, j, j)));
      return Math.abs(value - entry(covariance, j, i)) <= 1e-9 * bound;
    }),
  );
  const lower = isSymmetric ? factor(covariance) : undefined;
  if (lower === undefined) {
    throw new InvalidArgumentError("covariance", covariance, "a symmetric matrix without negative variances");
  }
  return lower;
}
