import { InvalidArgumentError } from "@tapewise/outcome";
import { describeUnit } from "./describe-unit.ts";
import type { LengthUnit } from "./length-unit.ts";
import { type Millimetres, millimetres } from "./millimetres.ts";
import { exactDecimal, nearestDouble } from "./ratio.ts";

/**
 * A number of some unit as a length in millimetres: the double nearest to the exact product.
 *
 * The number stands for the decimal that JavaScript prints for it, so `69.1` in is 1755.14 mm and not
 * 1755.1399999999996 mm. Negative numbers are differences of lengths.
 *
 * @throws {@link InvalidArgumentError} when the number or the result is not finite, or the unit is unknown.
 *
 * @example
 * ```ts
 * import { toMillimetres } from "@tapewise/units";
 * toMillimetres(18.375, "in"); // => 466.725
 * toMillimetres(69.1, "in"); // => 1755.14
 * toMillimetres(1.75, "m"); // => 1750
 * ```
 */
export function toMillimetres(value: number, unit: LengthUnit): Millimetres {
  const { nanometres } = describeUnit(unit);
  requireFinite("value", value);
  // Most numbers have at most six decimals. As a whole number of millionths below 1e15 such a number is
  // the only short decimal that its double stands for, and one division makes one correct rounding.
  const millionths = Math.round(value * 1e6);
  const product = millionths * (nanometres / 1e5);
  if (millionths / 1e6 === value && Number.isSafeInteger(product)) return (product / 1e7 + 0) as Millimetres;
  const { n, d } = exactDecimal(value);
  return millimetres(nearestDouble(n * BigInt(nanometres), d * 1_000_000n));
}

/**
 * A length as a number of some unit: the double nearest to the exact quotient, so 304.8 mm is 12 in and
 * not 12.000000000000002 in. As in {@link toMillimetres}, the number stands for its printed decimal;
 * a value of up to eleven digits that went through millimetres comes back unchanged.
 *
 * @throws {@link InvalidArgumentError} when the length is not finite or the unit is unknown.
 *
 * @example
 * ```ts
 * import { fromMillimetres, toMillimetres } from "@tapewise/units";
 * fromMillimetres(toMillimetres(1, "ft"), "in"); // => 12
 * fromMillimetres(toMillimetres(17.3, "in"), "in"); // => 17.3
 * ```
 */
export function fromMillimetres(mm: Millimetres, unit: LengthUnit): number {
  const { nanometres } = describeUnit(unit);
  requireFinite("mm", mm);
  const whole = Math.round(mm * 1e6);
  if (whole / 1e6 === mm && Math.abs(whole) < 1e15) return whole / nanometres + 0;
  const { n, d } = exactDecimal(mm);
  return nearestDouble(n * 1_000_000n, d * BigInt(nanometres)) + 0;
}

function requireFinite(argument: string, value: number): void {
  if (!Number.isFinite(value)) throw new InvalidArgumentError(argument, value, "a finite number");
}
