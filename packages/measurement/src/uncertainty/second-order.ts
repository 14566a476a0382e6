import { bendAt, bendOfSlopeAt, type Probe } from "./derivatives.ts";
import type { UncertainInput } from "./measurement-model.ts";

/** The terms of second order of a propagation. */
export interface SecondOrder {
  /** What they add to the variance: Σᵢ Σⱼ (½ fᵢⱼ² + fᵢ fᵢⱼⱼ) uᵢ² uⱼ² (note to GUM 5.1.2). */
  readonly variance: number;
  /** By how much the bend of the model shifts the mean of the result, ½ Σᵢ fᵢᵢ uᵢ². The value leaves it out. */
  readonly shift: number;
}

/** The terms of second order by differences an eighth of the standard uncertainties wide. */
export function secondOrderOf(
  probe: Probe,
  inputs: readonly UncertainInput[],
  slopes: readonly number[],
): SecondOrder {
  let variance = 0;
  let shift = 0;
  inputs.forEach((one, i) => {
    if (one.uncertainty === 0) return;
    inputs.forEach((other, j) => {
      if (other.uncertainty === 0) return;
      const bend = bendAt(probe, i, j);
      variance += 0.5 * bend ** 2 + (slopes[i] as number) * bendOfSlopeAt(probe, i, j);
      if (i === j) shift += 0.5 * bend;
    });
  });
  return { variance, shift };
}
