import { divideRounded } from "./divide-rounded.ts";

/** An exact number: `n / d` with `d` above zero, not necessarily in lowest terms. */
export interface Ratio {
  readonly n: bigint;
  readonly d: bigint;
}

/**
 * The decimal number that a double stands for: the shortest one that names it, which is what
 * JavaScript prints and what its writer meant. So 0.1 is a tenth and 2.675 is a tie between 2.67
 * and 2.68, although the doubles themselves lie a hair beside them.
 */
export function exactDecimal(value: number): Ratio {
  const [mantissa = "", exponent = "0"] = String(value).split("e");
  const [whole = "", decimals = ""] = mantissa.split(".");
  const n = BigInt(whole + decimals);
  const power = BigInt(Number(exponent) - decimals.length);
  return power < 0n ? { n, d: 10n ** -power } : { n: n * 10n ** power, d: 1n };
}

const SAFE = BigInt(Number.MAX_SAFE_INTEGER);

/** The double nearest to `n / d`, ties to even, for every size of `n` and `d`; infinite when too large. */
export function nearestDouble(n: bigint, d: bigint): number {
  if (n < 0n) return -nearestDouble(-n, d);
  // One division of two exact doubles is correctly rounded by IEEE 754.
  if (n <= SAFE && d <= SAFE) return Number(n) / Number(d);
  // The last of the 53 bits is worth 2 ** exponent, but never less than the smallest double.
  let exponent = Math.max(bitLength(n) - bitLength(d) - 53, -1074);
  let significand = halfEven(n, d, exponent);
  if (significand > SAFE + 1n) {
    exponent += 1;
    significand = halfEven(n, d, exponent);
  }
  return Number(significand) * 2 ** exponent;
}

/** `n / d / 2 ** exponent` rounded to a whole number, ties to even. */
function halfEven(n: bigint, d: bigint, exponent: number): bigint {
  const shift = BigInt(Math.abs(exponent));
  return exponent < 0 ? divideRounded(n << shift, d, "half-even") : divideRounded(n, d << shift, "half-even");
}

function bitLength(value: bigint): number {
  return value.toString(2).length;
}
