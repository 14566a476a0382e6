import { InvalidArgumentError } from "@tapewise/outcome";
import { requireDegrees, requireFinite, requireNotNegative } from "../require-number.ts";
import { combineUncertainties } from "../welch-satterthwaite.ts";
import { choleskyOf, correlationMatrix, type InputCorrelation } from "./correlations.ts";
import { type Probe, probeOf, scaleOf, slopeAt } from "./derivatives.ts";
import type { MeasurementModel, UncertainInput } from "./measurement-model.ts";
import { type SecondOrder, secondOrderOf } from "./second-order.ts";

/** A measurement whose uncertainty is asked for. */
export interface PropagationProblem {
  readonly inputs: readonly UncertainInput[];
  readonly model: MeasurementModel;
  /** ∂f/∂xᵢ in the order of the inputs; by central differences of the model where they are left out. */
  readonly sensitivities?: readonly number[];
  /** What is left out is uncorrelated. */
  readonly correlations?: readonly InputCorrelation[];
  /** Whether to add the terms of second order, for a model that bends within its uncertainties. */
  readonly secondOrder?: boolean;
}

/** What one input brings to the uncertainty of the result. */
export interface PropagationLine {
  readonly name: string;
  /** ∂f/∂xᵢ. */
  readonly sensitivity: number;
  /** |∂f/∂xᵢ| · u(xᵢ), in the unit of the result. */
  readonly contribution: number;
  /** Part of the variance of first order; with correlations it may be below 0. The parts add up to 1. */
  readonly share: number;
}

/** The result of a measurement with its uncertainty. */
export interface Propagation {
  readonly value: number;
  /** Combined standard uncertainty, in the unit of the value. */
  readonly uncertainty: number;
  /** Effective degrees of freedom. */
  readonly degreesOfFreedom: number;
  readonly lines: readonly PropagationLine[];
  /** What the terms of second order add; only where they were asked for. */
  readonly secondOrder?: SecondOrder;
}

/**
 * The law of propagation of uncertainty (GUM 5.1.2 and 5.2.2): u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ with sensitivities
 * cᵢ = ∂f/∂xᵢ; effective degrees of freedom by the Welch–Satterthwaite formula (GUM G.4.1).
 *
 * The formula is for independent inputs and the GUM has none for others: inputs that are correlated, directly
 * or by way of others, count here as one component that has the fewest degrees of freedom of theirs. The
 * terms of second order are those of the note to GUM 5.1.2, for independent inputs with normal distributions.
 *
 * @throws {@link InvalidArgumentError} when there is no input, two have the same name, a figure is not
 * finite or out of range, correlations cannot hold together, correlations are stated and terms of second
 * order asked for, or the model gives no number near its inputs.
 *
 * @example
 * ```ts
 * import { propagateUncertainty } from "@tapewise/measurement";
 * const area = propagateUncertainty({
 *   inputs: [
 *     { name: "length", value: 40, uncertainty: 3 },
 *     { name: "width", value: 10, uncertainty: 1 },
 *   ],
 *   model: (values) => Number(values[0]) * Number(values[1]),
 *   sensitivities: [10, 40],
 * });
 * [area.value, area.uncertainty]; // => [400, 50]
 * area.lines.map((line) => line.share); // => [0.36, 0.64]
 * ```
 */
export function propagateUncertainty(problem: PropagationProblem): Propagation {
  const { inputs, model, sensitivities, correlations = [] } = problem;
  requireInputs(inputs);
  const names = inputs.map(({ name }) => name);
  const matrix = correlationMatrix(names, correlations);
  choleskyOf(matrix);
  const probe = probeOf(model, inputs);
  const slopes =
    sensitivities === undefined ? inputs.map((_, i) => slopeOf(probe, inputs, i)) : sensitivities;
  if (slopes.length !== inputs.length) {
    throw new InvalidArgumentError("sensitivities", slopes, `a list of ${inputs.length}, one an input`);
  }
  slopes.forEach((slope, i) => {
    requireFinite(`sensitivities[${i}]`, slope);
  });
  const signed = inputs.map(({ uncertainty }, i) => uncertainty * (slopes[i] as number));
  // Parts of the largest, so that squares neither overflow nor vanish.
  const largest = signed.reduce((most, part) => Math.max(most, Math.abs(part)), 0);
  requireFinite("sensitivities times uncertainties", largest * Math.sqrt(inputs.length));
  const parts = signed.map((part) => (largest === 0 ? 0 : part / largest));
  const covariances = parts.map(
    (own, i) =>
      own * parts.reduce((sum, other, j) => sum + other * ((matrix[i] as Float64Array)[j] as number), 0),
  );
  const sumOver = (positions: readonly number[]): number =>
    // Opposite parts of a whole correlation may leave a rounding error below zero.
    Math.max(
      0,
      positions.reduce((sum, i) => sum + (covariances[i] as number), 0),
    );
  const variance = sumOver(inputs.map((_, i) => i));
  const { degreesOfFreedom } = combineUncertainties(
    groupsOf(matrix).map((group) => ({
      uncertainty: Math.sqrt(sumOver(group)),
      degreesOfFreedom: Math.min(
        ...group.map((i) => inputs[i]?.degreesOfFreedom ?? Number.POSITIVE_INFINITY),
      ),
    })),
  );
  const lines = inputs.map(({ name }, i) => ({
    name,
    sensitivity: slopes[i] as number,
    contribution: Math.abs(signed[i] as number),
    share: variance === 0 ? 0 : (covariances[i] as number) / variance,
  }));
  const result = { value: probe(), uncertainty: largest * Math.sqrt(variance), degreesOfFreedom, lines };
  if (problem.secondOrder !== true) return result;
  if (correlations.some(({ coefficient }) => coefficient !== 0)) {
    const expected = "none: the terms of second order are for independent inputs";
    throw new InvalidArgumentError("correlations", correlations, expected);
  }
  const secondOrder = secondOrderOf(probe, inputs, signed);
  const whole = result.uncertainty ** 2 + secondOrder.variance;
  if (!(whole >= 0)) {
    throw new InvalidArgumentError("model", whole, "a model whose terms of second order leave a variance");
  }
  return { ...result, uncertainty: Math.sqrt(whole), secondOrder };
}

function requireInputs(inputs: readonly UncertainInput[]): void {
  if (inputs.length === 0) throw new InvalidArgumentError("inputs", inputs, "at least one input");
  inputs.forEach(({ value, uncertainty, degreesOfFreedom = Number.POSITIVE_INFINITY }, i) => {
    requireFinite(`inputs[${i}].value`, value);
    requireNotNegative(`inputs[${i}].uncertainty`, uncertainty);
    requireDegrees(`inputs[${i}].degreesOfFreedom`, degreesOfFreedom);
  });
}

function slopeOf(probe: Probe, inputs: readonly UncertainInput[], i: number): number {
  return slopeAt(probe, i) / scaleOf(inputs[i] as UncertainInput);
}

/** Inputs that hang together by correlations, each with the others of its kind. */
function groupsOf(matrix: readonly Float64Array[]): readonly (readonly number[])[] {
  const groups: number[][] = [];
  const taken = new Set<number>();
  matrix.forEach((_, start) => {
    if (taken.has(start)) return;
    const group: number[] = [];
    const waiting = [start];
    taken.add(start);
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      group.push(next);
      (matrix[next] as Float64Array).forEach((coefficient, other) => {
        if (coefficient === 0 || taken.has(other)) return;
        taken.add(other);
        waiting.push(other);
      });
    }
    groups.push(group);
  });
  return groups;
}
