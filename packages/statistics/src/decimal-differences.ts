import { requireValues } from "./require-values.ts";

/**
 * How far each value lies from the first, exact for the decimals that the values print as and then rounded once.
 *
 * A reading is written down in decimals. The nearest double to 1000000000000.4 is 2.3e-5 away from it, which is much where
 * readings differ by tenths; the decimal that the double prints as is the reading itself, up to 15 digits. Differences
 * of decimals are taken in whole numbers, so that digits which all values share cost nothing. For values that never
 * were decimals the difference is within a unit in the last place of either.
 *
 * @throws {@link InvalidArgumentError} when there is no value, or one is not finite.
 *
 * @example
 * ```ts
 * import { decimalDifferences } from "@tapewise/statistics";
 * decimalDifferences([1_000_000_000_000.4, 1_000_000_000_000.5]); // => [0, 0.1]
 * 1_000_000_000_000.5 - 1_000_000_000_000.4; // => 0.0999755859375
 * ```
 */
export function decimalDifferences(values: readonly number[]): readonly number[] {
  requireValues("values", values);
  const decimals = values.map(toDecimal);
  const exponent = Math.min(...new Set(decimals.map((decimal) => decimal.exponent)));
  const whole = decimals.map((decimal) => decimal.digits * 10n ** BigInt(decimal.exponent - exponent));
  const first = whole[0] ?? 0n;
  return whole.map((value) => Number(`${value - first}e${exponent}`));
}

interface Decimal {
  readonly digits: bigint;
  readonly exponent: number;
}

/** The shortest decimal that stands for a finite number: digits times a power of ten. */
function toDecimal(value: number): Decimal {
  const [mantissa = "0", power = "0"] = String(value).split("e");
  const [whole = "0", fraction = ""] = mantissa.split(".");
  return { digits: BigInt(whole + fraction), exponent: Number(power) - fraction.length };
}
