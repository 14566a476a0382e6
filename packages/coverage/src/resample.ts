import {
  type JointModel,
  type MixtureJoint,
  mixtureJoint,
  normalJoint,
  type Variable,
} from "@tapewise/population";
import { chiSquareQuantile, type Random } from "@tapewise/statistics";

/**
 * The model that another survey of as many people would have given: for a normal model the mean is drawn from
 * N(μ, Σ/n) and the sample covariance from a Wishart distribution with n − 1 degrees of freedom (Bartlett 1933);
 * for a mixture each part by itself. `undefined` for a model of another kind.
 */
export function resample(
  model: JointModel,
  variables: readonly Variable[],
  people: readonly number[],
  random: Random,
): JointModel | undefined {
  if (isMixture(model)) {
    const parts = model.parts.flatMap((part, k) => {
      const drawn = resample(part.model, variables, people.slice(k, k + 1), random);
      return drawn === undefined ? [] : [{ weight: part.weight, model: drawn }];
    });
    return parts.length < model.parts.length ? undefined : mixtureJoint({ about: model.about, parts });
  }
  const [count] = people;
  if (model.kind !== "normal" || count === undefined) return undefined;
  const { about, mean, covariance } = model.marginal(variables);
  const lower = factor(covariance);
  const freedom = count - 1;
  // A of the Bartlett decomposition: L A Aᵀ Lᵀ is Wishart.
  const bartlett = variables.map((_, i) =>
    variables.map((__, j) => {
      if (j > i) return 0;
      return j < i ? random.normal() : Math.sqrt(chiSquareQuantile(random.uniform(), freedom - i));
    }),
  );
  const root = product(lower, bartlett);
  const shift = variables.map(() => random.normal() / Math.sqrt(count));
  return normalJoint({
    about,
    variables,
    mean: mean.map((centre, i) => shift.reduce((sum, z, j) => sum + at(lower, i, j) * z, centre)),
    covariance: root.map((row, i) =>
      root.map((_, j) => {
        // Smaller index first, so that the matrix is symmetric to the last bit.
        const [a, b] = i < j ? [row, root[j]] : [root[j], row];
        return (a ?? []).reduce((sum, value, k) => sum + value * (b?.[k] ?? 0), 0) / freedom;
      }),
    ),
  });
}

/** Whether a model is a mixture, which has parts. */
export function isMixture(model: JointModel): model is MixtureJoint {
  return model.kind === "mixture";
}

function at(matrix: readonly (readonly number[])[], i: number, j: number): number {
  return matrix[i]?.[j] ?? 0;
}

function product(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
  return a.map((row, i) => row.map((_, j) => row.reduce((sum, __, k) => sum + at(a, i, k) * at(b, k, j), 0)));
}

/** The lower triangle L with L Lᵀ = the matrix (Cholesky); a variable without spread of its own gets a zero. */
function factor(covariance: readonly (readonly number[])[]): number[][] {
  const lower: number[][] = covariance.map((row) => row.map(() => 0));
  for (const [i, row] of lower.entries()) {
    for (let j = 0; j <= i; j += 1) {
      let rest = at(covariance, i, j);
      for (let k = 0; k < j; k += 1) rest -= at(lower, i, k) * at(lower, j, k);
      const pivot = at(lower, j, j);
      if (i === j) row[j] = Math.sqrt(Math.max(0, rest));
      else row[j] = pivot > 0 ? rest / pivot : 0;
    }
  }
  return lower;
}
