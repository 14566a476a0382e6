import { InvalidArgumentError } from "@tapewise/outcome";
import { requireWeights } from "../require-argument.ts";
import { mixtureDistribution } from "../univariate/mixture.ts";
import { entry } from "./gaussian.ts";
import type { About, JointModel, Known, Variable } from "./joint-model.ts";
import { describeKnown, requireAbout } from "./variable.ts";

/** One kind of people in a mixture of joint models. */
export interface JointPart {
  /** How many there are of this kind, in any measure: only the ratio to the other weights counts. */
  readonly weight: number;
  readonly model: JointModel;
}

/** People of several kinds, of whom it is not known which is which. */
export interface MixtureJoint extends JointModel {
  readonly kind: "mixture";
  readonly parts: readonly JointPart[];
  marginal(variables: readonly Variable[]): MixtureJoint;
  conditional(known: Known): MixtureJoint;
}

/**
 * A mixture of joint models with the same variables: women and men where the sex is unknown, or several cuts.
 *
 * What is known of a person also says which kind the person is likely of: `conditional` weighs each part by
 * the density that it gives to the known values (Bayes).
 *
 * @throws {@link InvalidArgumentError} when there is no part, the parts have different variables, a weight is
 * below 0 or not finite, or all are 0. `conditional` throws for values that no part can have.
 *
 * @example
 * ```ts
 * import { mixtureJoint, referencePopulation } from "@tapewise/population";
 * import { millimetres } from "@tapewise/units";
 * const everybody = mixtureJoint({
 *   about: { label: "adults of unknown sex", source: "ANSUR II (2012)", caveat: "soldiers" },
 *   parts: [
 *     { weight: 1, model: referencePopulation("women").marginal(["stature", "torso-length"]) },
 *     { weight: 1, model: referencePopulation("men").marginal(["stature", "torso-length"]) },
 *   ],
 * });
 * const tall = everybody.conditional({ stature: millimetres(1800) });
 * (tall.parts[1]?.weight ?? 0) > 0.9; // => true
 * ```
 */
export function mixtureJoint(input: {
  readonly about: About;
  readonly parts: readonly JointPart[];
}): MixtureJoint {
  const { about } = input;
  requireAbout(about);
  const [first] = input.parts;
  if (first === undefined) throw new InvalidArgumentError("parts", input.parts, "at least one part");
  const variables = first.model.variables;
  for (const { model } of input.parts) {
    if (model.variables.join() !== variables.join()) {
      throw new InvalidArgumentError(
        "parts",
        model.variables.join(", "),
        `the variables ${variables.join(", ")}`,
      );
    }
  }
  requireWeights(
    "weights",
    input.parts.map(({ weight }) => weight),
    input.parts.length,
  );
  const total = input.parts.reduce((sum, { weight }) => sum + weight, 0);
  const parts = input.parts
    .map(({ weight, model }) => ({ weight: weight / total, model }))
    .filter(({ weight }) => weight > 0);
  const over = (f: (model: JointModel) => number): number =>
    parts.reduce((sum, { weight, model }) => sum + weight * f(model), 0);

  const mean = variables.map((_, i) => over((model) => model.mean[i] ?? 0));
  const apart = (model: JointModel, i: number): number => (model.mean[i] ?? 0) - (mean[i] ?? 0);
  const covariance = variables.map((_, i) =>
    variables.map((__, j) =>
      over((model) => entry(model.covariance, i, j) + apart(model, i) * apart(model, j)),
    ),
  );
  const withParts = (label: string, changed: readonly JointPart[]): MixtureJoint =>
    mixtureJoint({ about: { ...about, label }, parts: changed });

  return {
    kind: "mixture",
    about,
    variables,
    parts,
    mean,
    covariance,
    distribution: (variable) =>
      mixtureDistribution(
        parts.map(({ weight, model }) => ({ weight, distribution: model.distribution(variable) })),
      ),
    marginal: (wanted) =>
      withParts(
        about.label,
        parts.map(({ weight, model }) => ({ weight, model: model.marginal(wanted) })),
      ),
    conditional: (known) => {
      const logs = parts.map(({ weight, model }) => Math.log(weight) + model.logDensity(known));
      const highest = Math.max(...logs);
      if (highest === Number.NEGATIVE_INFINITY) {
        throw new InvalidArgumentError("known", describeKnown("", known), "values that a part can have");
      }
      const likely = parts
        .map(({ model }, k) => ({ weight: Math.exp((logs[k] ?? highest) - highest), model }))
        .filter(({ weight }) => weight > 0);
      return withParts(
        describeKnown(about.label, known),
        likely.map(({ weight, model }) => ({ weight, model: model.conditional(known) })),
      );
    },
    logDensity: (known) => {
      const logs = parts.map(({ weight, model }) => Math.log(weight) + model.logDensity(known));
      const highest = Math.max(...logs);
      if (!Number.isFinite(highest)) return highest;
      return highest + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - highest), 0));
    },
    boxProbability: (box) => {
      const answers = parts.map(({ weight, model }) => ({ weight, ...model.boxProbability(box) }));
      return {
        probability: answers.reduce((sum, { weight, probability }) => sum + weight * probability, 0),
        error: answers.reduce((sum, { weight, error }) => sum + weight * error, 0),
      };
    },
    sample: (random) => {
      let rest = random.uniform();
      const chosen = parts.find(({ weight }) => {
        rest -= weight;
        return rest < 0;
      });
      // Shares that add up to a little less than 1 leave the last part.
      return (chosen ?? parts[parts.length - 1] ?? first).model.sample(random);
    },
  };
}
