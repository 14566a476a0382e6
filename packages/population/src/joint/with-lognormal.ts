import { InvalidArgumentError } from "@tapewise/outcome";
import { empiricalDistribution } from "../univariate/empirical.ts";
import { lognormalDistribution } from "../univariate/lognormal.ts";
import { entry } from "./gaussian.ts";
import type { Box, JointModel, Known, Variable } from "./joint-model.ts";
import { type NormalJoint, normalJoint } from "./normal-joint.ts";
import { describeKnown, placeOf, requireVariables } from "./variable.ts";

/** A joint model in which the logarithms of some variables, and the others as they are, are jointly normal. */
export interface LognormalJoint extends JointModel {
  readonly kind: "lognormal";
  /** Which of the variables are lognormal. */
  readonly logged: readonly Variable[];
  marginal(variables: readonly Variable[]): LognormalJoint;
  conditional(known: Known): LognormalJoint;
}

/**
 * The same means, standard deviations and covariances, but with the named variables lognormal instead of
 * normal: girths and body mass have a longer tail to the right. Everything stays in closed form, since the
 * logarithms are jointly normal: σ²ᵢ = ln(1 + sᵢ²/mᵢ²), μᵢ = ln mᵢ − σ²ᵢ/2, σᵢⱼ = ln(1 + cᵢⱼ / (mᵢ mⱼ)) between two
 * logarithms and cᵢⱼ / mᵢ between the logarithm i and a variable j as it is.
 *
 * @throws {@link InvalidArgumentError} when a named variable is not in the model or its mean is not above 0, or
 * when no joint distribution of this kind has such covariances.
 *
 * @example
 * ```ts
 * import { referencePopulation, withLognormal } from "@tapewise/population";
 * const normal = referencePopulation("women").marginal(["stature", "waist-girth"]);
 * const skewed = withLognormal(normal, ["waist-girth"]);
 * skewed.mean[1]?.toFixed(6) === normal.mean[1]?.toFixed(6); // => true
 * skewed.distribution("waist-girth").quantile(0.01) > normal.distribution("waist-girth").quantile(0.01); // => true
 * ```
 */
export function withLognormal(model: NormalJoint, logged: readonly Variable[]): LognormalJoint {
  requireVariables("logged", logged);
  const { variables } = model;
  for (const variable of logged) {
    const mean = model.mean[placeOf(variables, variable)] ?? 0;
    if (!(mean > 0)) throw new InvalidArgumentError(`the mean of ${variable}`, mean, "above 0");
  }
  const factors = variables.map((variable, i) =>
    logged.includes(variable) ? (model.mean[i] ?? 1) : undefined,
  );
  const covariance = variables.map((_, i) =>
    variables.map((__, j) => {
      const value = entry(model.covariance, i, j);
      const [a, b] = [factors[i], factors[j]];
      if (a !== undefined && b !== undefined) return Math.log1p(value / (a * b));
      return value / (a ?? b ?? 1);
    }),
  );
  const mean = variables.map((_, i) => {
    const factor = factors[i];
    return factor === undefined ? (model.mean[i] ?? 0) : Math.log(factor) - entry(covariance, i, i) / 2;
  });
  if (!covariance.flat().every(Number.isFinite)) {
    throw new InvalidArgumentError("covariance", "one far below zero", "what lognormal variables can have");
  }
  return wrap(normalJoint({ about: model.about, variables, mean, covariance }), logged);
}

/** The model of which `inner` is that of the logarithms. */
function wrap(inner: NormalJoint, logged: readonly Variable[]): LognormalJoint {
  const { variables, about } = inner;
  const isLogged = variables.map((variable) => logged.includes(variable));
  const spread = (i: number, j: number): number => entry(inner.covariance, i, j);
  const mean = inner.mean.map((value, i) => (isLogged[i] ? Math.exp(value + spread(i, i) / 2) : value));
  const covariance = variables.map((_, i) =>
    variables.map((__, j) => {
      const [a, b] = [mean[i] ?? 0, mean[j] ?? 0];
      if (isLogged[i] && isLogged[j]) return a * b * Math.expm1(spread(i, j));
      if (isLogged[i]) return a * spread(i, j);
      return isLogged[j] ? b * spread(i, j) : spread(i, j);
    }),
  );
  const inLogs = (known: Known): Known | undefined => {
    const entries = (Object.entries(known) as [Variable, number | undefined][]).filter(
      ([, value]) => value !== undefined,
    );
    if (entries.some(([variable, value]) => logged.includes(variable) && !((value ?? 0) > 0)))
      return undefined;
    return Object.fromEntries(
      entries.map(([variable, value = 0]) => [variable, logged.includes(variable) ? Math.log(value) : value]),
    );
  };
  return {
    kind: "lognormal",
    about,
    variables,
    logged,
    mean,
    covariance,
    distribution: (variable) => {
      const own = inner.distribution(variable);
      if (!logged.includes(variable)) return own;
      if (own.sd === 0) return empiricalDistribution([Math.exp(own.mean)]);
      return lognormalDistribution({ meanLog: own.mean, sdLog: own.sd });
    },
    marginal: (wanted) =>
      wrap(
        inner.marginal(wanted),
        logged.filter((variable) => wanted.includes(variable)),
      ),
    conditional: (known) => {
      const logs = inLogs(known);
      if (logs === undefined) throw new InvalidArgumentError("known", known, "values above 0");
      const given = inner.conditional(logs);
      const named = normalJoint({ ...given, about: { ...about, label: describeKnown(about.label, known) } });
      return wrap(
        named,
        logged.filter((variable) => given.variables.includes(variable)),
      );
    },
    logDensity: (known) => {
      const logs = inLogs(known);
      if (logs === undefined) return Number.NEGATIVE_INFINITY;
      const names = Object.keys(logs) as Variable[];
      // Per mm instead of per unit of the logarithm.
      const jacobian = names.reduce((sum, name) => sum + (logged.includes(name) ? (logs[name] ?? 0) : 0), 0);
      return inner.logDensity(logs) - jacobian;
    },
    boxProbability: (box) => {
      const entries = Object.entries(box) as [Variable, Box[Variable]][];
      const bounds = entries.flatMap(([variable, within]) => {
        if (within === undefined || !logged.includes(variable)) return [[variable, within] as const];
        const [from, to] = [Math.log(Math.max(within.from, 0)), Math.log(Math.max(within.to, 0))];
        return [[variable, { ...within, from, to }] as const];
      });
      return inner.boxProbability(Object.fromEntries(bounds));
    },
    sample: (random) => inner.sample(random).map((value, i) => (isLogged[i] ? Math.exp(value) : value)),
  };
}
