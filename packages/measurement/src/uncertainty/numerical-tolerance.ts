import { requireCount, requirePositive } from "../require-number.ts";

/**
 * The numerical tolerance of a standard uncertainty of which so many digits mean something: half a unit
 * in the last of them (JCGM 101:2008, 7.9.2). In the unit of the uncertainty.
 *
 * @param uncertainty - standard uncertainty, above 0
 * @param digits - 1 to 9; the document takes 1 or 2
 * @throws {@link InvalidArgumentError} when the uncertainty is not above 0 or the digits are no such number.
 *
 * @example
 * ```ts
 * import { numericalTolerance } from "@tapewise/measurement";
 * numericalTolerance(35, 2); // => 0.5
 * numericalTolerance(0.3, 1); // => 0.05
 * ```
 */
export function numericalTolerance(uncertainty: number, digits: number): number {
  requirePositive("uncertainty", uncertainty);
  requireCount("digits", digits, 1, 9);
  // Rounded first: 9.96 to two digits is 10, whose last digit is a whole one.
  const exponent = Number(uncertainty.toExponential(digits - 1).split("e")[1]) - (digits - 1);
  return Number(`5e${exponent - 1}`);
}
