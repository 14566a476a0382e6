/** Exact arithmetic for the laws of units, written apart from the code under test. */

/** `numerator / denominator`, the denominator above zero. */
export type Exact = readonly [numerator: bigint, denominator: bigint];

/** Nanometres per unit, by definition (NIST SP 811 (2008), Appendix B.8; from memory). */
export const NANOMETRES = {
  mm: 1_000_000n,
  cm: 10_000_000n,
  m: 1_000_000_000n,
  in: 25_400_000n,
  ft: 304_800_000n,
};

/** The number that a double's 64 bits stand for. */
export function exactOfDouble(value: number): Exact {
  const bits = bitsOf(value);
  const exponent = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const significand = exponent === 0 ? fraction : fraction | 0x10000000000000n;
  const signed = bits >> 63n === 1n ? -significand : significand;
  const power = BigInt(Math.max(exponent, 1) - 1075);
  return power >= 0n ? [signed << power, 1n] : [signed, 1n << -power];
}

/** Whether no other double is nearer to the exact number; of two equally near ones, the even one. */
export function isNearestDouble(value: number, exact: Exact): boolean {
  const bits = bitsOf(Math.abs(value));
  const distance = distanceOf(value, exact);
  return [bits - 1n, bits + 1n]
    .filter((neighbour) => neighbour >= 0n)
    .every((neighbour) => {
      const other = distanceOf(Math.sign(value) * doubleOf(neighbour), exact);
      const order = compare(distance, other);
      return order < 0 || (order === 0 && bits % 2n === 0n);
    });
}

/** -1, 0 or 1. */
export function compare(a: Exact, b: Exact): number {
  const left = a[0] * b[1];
  const right = b[0] * a[1];
  return left < right ? -1 : left > right ? 1 : 0;
}

export function subtract(a: Exact, b: Exact): Exact {
  return [a[0] * b[1] - b[0] * a[1], a[1] * b[1]];
}

export function absolute([numerator, denominator]: Exact): Exact {
  return [numerator < 0n ? -numerator : numerator, denominator];
}

/** A decimal from its digits: `units` of 10 to the minus `decimals`. */
export function decimalText(units: bigint, decimals: number, mark = "."): string {
  const digits = String(units < 0n ? -units : units).padStart(decimals + 1, "0");
  const whole = digits.slice(0, digits.length - decimals);
  return `${units < 0n ? "-" : ""}${whole}${decimals === 0 ? "" : mark + digits.slice(-decimals)}`;
}

function distanceOf(value: number, exact: Exact): Exact {
  return absolute(subtract(exactOfDouble(value), exact));
}

function bitsOf(value: number): bigint {
  return new BigUint64Array(new Float64Array([value]).buffer)[0] ?? 0n;
}

function doubleOf(bits: bigint): number {
  return new Float64Array(new BigUint64Array([bits]).buffer)[0] ?? 0;
}
