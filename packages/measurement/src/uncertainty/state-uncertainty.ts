import { formatLength, millimetres } from "@tapewise/units";
import { decimalsFor, MANY_DEGREES } from "../written-decimals.ts";
import { expandUncertainty } from "./expand-uncertainty.ts";

/** How an expanded uncertainty is written down. */
export interface UncertaintyStatementOptions {
  readonly unit: "cm" | "in";
  /** Probability of the interval; 0.95 where it is left out. */
  readonly probability?: number;
}

/**
 * A length with its expanded uncertainty as a sentence to write down, with what GUM 7.2.3 asks for: value,
 * expanded uncertainty, probability, coverage factor, standard uncertainty and degrees of freedom. Rounded as by
 * `stateEstimate`, the expanded uncertainty to the place of the value.
 *
 * @param result - value and standard uncertainty in mm
 * @throws {@link InvalidArgumentError} when a figure is not finite, the uncertainty is below 0, there are no
 * degrees of freedom, the probability is not between 0 and 1, or the unit is none.
 *
 * @example
 * ```ts
 * import { stateUncertainty } from "@tapewise/measurement";
 * stateUncertainty({ value: 436, uncertainty: 4, degreesOfFreedom: 10.8 }, { unit: "cm" });
 * // => "43.6 cm ± 0.9 cm (95 % interval, k = 2.21), from a standard uncertainty of 0.4 cm with 10 effective degrees of freedom"
 * ```
 */
export function stateUncertainty(
  result: { readonly value: number; readonly uncertainty: number; readonly degreesOfFreedom: number },
  options: UncertaintyStatementOptions,
): string {
  const { factor, expanded, probability } = expandUncertainty(result, options.probability ?? 0.95);
  const { unit } = options;
  const decimals = decimalsFor(result.uncertainty, unit);
  const write = (mm: number): string =>
    formatLength(millimetres(mm), { unit, decimals, rounding: "half-even" });
  const degrees =
    result.degreesOfFreedom >= MANY_DEGREES
      ? ""
      : ` with ${Math.floor(result.degreesOfFreedom)} effective degrees of freedom`;
  const percent = `${Number((probability * 100).toPrecision(12))} %`;
  return (
    `${write(result.value)} ± ${write(expanded)} (${percent} interval, k = ${factor.toFixed(2)}), ` +
    `from a standard uncertainty of ${write(result.uncertainty)}${degrees}`
  );
}
