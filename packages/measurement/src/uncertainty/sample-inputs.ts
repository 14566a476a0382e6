import { InvalidArgumentError } from "@tapewise/outcome";
import type { Random } from "@tapewise/statistics";
import { choleskyOf, correlationMatrix, type InputCorrelation } from "./correlations.ts";
import { drawerOf } from "./draw-input.ts";
import type { InputDistribution } from "./input-distribution.ts";
import { requireDistribution } from "./require-distribution.ts";

/**
 * A source of draws of all inputs together. The list is the same each time, with other numbers in it.
 */
export function sampleInputs(
  inputs: readonly { readonly name: string; readonly distribution: InputDistribution }[],
  correlations: readonly InputCorrelation[],
  random: Random,
): () => Float64Array {
  if (inputs.length === 0) throw new InvalidArgumentError("inputs", inputs, "at least one input");
  inputs.forEach(({ distribution }, i) => {
    requireDistribution(`inputs[${i}].distribution`, distribution);
  });
  const matrix = correlationMatrix(
    inputs.map(({ name }) => name),
    correlations,
  );
  const triangle = choleskyOf(matrix);
  const values = new Float64Array(inputs.length);
  const scores = new Float64Array(inputs.length);
  const drawers = inputs.map(({ name, distribution }, i) => {
    const isJoined = (matrix[i] as Float64Array).some((coefficient, j) => j !== i && coefficient !== 0);
    if (!isJoined) return drawerOf(distribution, random);
    if (distribution.shape !== "normal") {
      throw new InvalidArgumentError("correlations.between", name, "an input with a normal distribution");
    }
    const { mean, sd } = distribution;
    const row = triangle[i] as Float64Array;
    return () => {
      scores[i] = random.normal();
      let score = 0;
      for (let j = 0; j <= i; j += 1) score += (row[j] as number) * (scores[j] as number);
      return mean + sd * score;
    };
  });
  return () => {
    for (let i = 0; i < values.length; i += 1) values[i] = (drawers[i] as () => number)();
    return values;
  };
}
