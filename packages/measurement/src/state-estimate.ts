import { dimensionName } from "@tapewise/landmarks";
import { formatLength, type Millimetres, millimetres } from "@tapewise/units";
import type { Estimate } from "./estimate.ts";
import { decimalsFor, MANY_DEGREES } from "./written-decimals.ts";

/** How an estimate is written down. */
export interface StatementOptions {
  readonly unit: "cm" | "in";
}

/**
 * An estimate as a sentence to write down, with what GUM 7.2.3 asks for: value, standard uncertainty,
 * degrees of freedom, and the coverage interval with its probability and factor. Centimetres are
 * rounded half to even to one decimal (two where the uncertainty is below 1 mm), inches to two, both to
 * more where the uncertainty would read as 0. Degrees of freedom are rounded down (GUM G.4.1) and left out
 * from 200 on.
 *
 * @throws {@link InvalidArgumentError} when the unit is none.
 *
 * @example
 * ```ts
 * import { parseEstimate, stateEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const estimate = parseEstimate({
 *   dimension: "torso-length",
 *   readings: [parseLength("43 cm"), parseLength("44 cm"), parseLength("45 cm")],
 *   error: { biasMm: 10, repeatMm: 0, resolutionMm: 0 },
 * });
 * stateEstimate(estimate, { unit: "cm" });
 * // => "torso length 44.0 cm from 3 readings, standard uncertainty 1.0 cm; 95 % interval 42.0 cm to 46.0 cm (k = 1.96)"
 * ```
 */
export function stateEstimate(estimate: Estimate, options: StatementOptions): string {
  const { coverage, degreesOfFreedom, readings } = estimate;
  const decimals = decimalsFor(estimate.uncertaintyMm, options.unit);
  const write = (length: Millimetres) =>
    formatLength(length, { unit: options.unit, decimals, rounding: "half-even" });
  const degrees =
    degreesOfFreedom >= MANY_DEGREES
      ? ""
      : ` with ${Math.floor(degreesOfFreedom)} effective degrees of freedom`;
  const count = readings.length === 1 ? "1 reading" : `${readings.length} readings`;
  const percent = `${Number((coverage.probability * 100).toPrecision(12))} %`;
  return (
    `${dimensionName(estimate.dimension)} ${write(estimate.mm)} from ${count}, ` +
    `standard uncertainty ${write(millimetres(estimate.uncertaintyMm))}${degrees}; ` +
    `${percent} interval ${write(millimetres(coverage.lowerMm))} to ${write(millimetres(coverage.upperMm))} ` +
    `(k = ${coverage.factor.toFixed(2)})`
  );
}
