import { InvalidArgumentError } from "@tapewise/outcome";
import type { MeasurementModel, UncertainInput } from "./measurement-model.ts";

/** The value of a model somewhere near its inputs: steps are parts of the standard uncertainties. */
export type Probe = (steps?: readonly (readonly [position: number, step: number])[]) => number;

/** A probe of a model about the values of its inputs; refuses a model that gives no number. */
export function probeOf(model: MeasurementModel, inputs: readonly UncertainInput[]): Probe {
  const scales = inputs.map(scaleOf);
  return (steps = []) => {
    const values = Float64Array.from(inputs, ({ value }) => value);
    for (const [position, step] of steps) {
      values[position] = (values[position] as number) + step * (scales[position] as number);
    }
    const result = model(values);
    if (!Number.isFinite(result)) {
      const expected = `a function that gives finite numbers near its inputs (${[...values].join(", ")})`;
      throw new InvalidArgumentError("model", result, expected);
    }
    return result;
  };
}

/** An input that is exact has a slope too; a small part of its size finds it. */
export function scaleOf({ value, uncertainty }: UncertainInput): number {
  return uncertainty > 0 ? uncertainty : Math.max(1, Math.abs(value)) * 2 ** -10;
}

/** Small against the bend of a model, large against the rounding of its values. */
const STEP = 2 ** -4;

/** ∂f/∂xᵢ · uᵢ by central differences of two widths and Richardson's extrapolation. */
export function slopeAt(probe: Probe, i: number): number {
  const difference = (step: number): number => (probe([[i, step]]) - probe([[i, -step]])) / (2 * step);
  return (4 * difference(STEP) - difference(2 * STEP)) / 3;
}

const WIDE = 2 ** -3;

/** ∂²f/∂xᵢ∂xⱼ · uᵢuⱼ. */
export function bendAt(probe: Probe, i: number, j: number): number {
  if (i === j) return (probe([[i, WIDE]]) - 2 * probe() + probe([[i, -WIDE]])) / WIDE ** 2;
  let sum = 0;
  for (const one of [1, -1]) {
    for (const other of [1, -1]) {
      sum +=
        one *
        other *
        probe([
          [i, one * WIDE],
          [j, other * WIDE],
        ]);
    }
  }
  return sum / (4 * WIDE ** 2);
}

/** ∂³f/∂xᵢ∂xⱼ² · uᵢuⱼ². */
export function bendOfSlopeAt(probe: Probe, i: number, j: number): number {
  if (i === j) {
    const outer = probe([[i, 2 * WIDE]]) - probe([[i, -2 * WIDE]]);
    const inner = probe([[i, WIDE]]) - probe([[i, -WIDE]]);
    return (outer - 2 * inner) / (2 * WIDE ** 3);
  }
  const bend = (step: number): number =>
    probe([
      [i, step],
      [j, WIDE],
    ]) -
    2 * probe([[i, step]]) +
    probe([
      [i, step],
      [j, -WIDE],
    ]);
  return (bend(WIDE) - bend(-WIDE)) / (2 * WIDE ** 3);
}
