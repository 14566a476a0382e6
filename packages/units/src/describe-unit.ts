import { InvalidArgumentError } from "@tapewise/outcome";
import { UNIT_FACTS } from "./data.ts";
import { type LengthUnit, lengthUnits, type UnitDescription } from "./length-unit.ts";

/**
 * The names of a unit and its exact length in nanometres, from the international inch of 25.4 mm
 * (NIST SP 811 (2008), Appendix B.8).
 *
 * @throws {@link InvalidArgumentError} when the unit is none of {@link lengthUnits}.
 *
 * @example
 * ```ts
 * import { describeUnit } from "@tapewise/units";
 * describeUnit("in").nanometres; // => 25400000
 * describeUnit("ft").plural; // => "feet"
 * ```
 */
export function describeUnit(unit: LengthUnit): UnitDescription {
  if (!Object.hasOwn(UNIT_FACTS, unit)) {
    throw new InvalidArgumentError("unit", unit, `one of ${lengthUnits.join(", ")}`);
  }
  return UNIT_FACTS[unit];
}
