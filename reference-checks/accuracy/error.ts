import { Decimal } from "decimal.js";

/** Fifty digits carry the difference of a double and a reference of 25. */
const Exact: typeof Decimal = Decimal.clone({ precision: 50 });

/** How far a double is from what it should be. */
export interface PointError {
  readonly relative: number;
  readonly absolute: number;
  /** In units of the last place of the double nearest to the reference. */
  readonly ulp: number;
}

/** The distance from a positive double to the next one. */
export function unitInLastPlace(value: number): number {
  const size = Math.abs(value);
  if (size < 2 ** -1022) return 2 ** -1074;
  const exponent = Math.floor(Math.log2(size));
  // log2 rounds up just below a power of two.
  const power = 2 ** exponent > size ? exponent - 1 : exponent;
  return 2 ** (power - 52);
}

/** A double as it is: `Decimal` itself takes the shortest decimal that stands for it. */
function exactly(value: number): Decimal {
  if (value === 0) return new Exact(0);
  const unit = unitInLastPlace(value);
  return new Exact(value / unit).times(new Exact(2).pow(Math.log2(unit)));
}

export function errorOf(actual: number, reference: string): PointError {
  const expected = new Exact(reference);
  const off = exactly(actual).minus(expected).abs();
  return {
    absolute: off.toNumber(),
    relative: expected.isZero() ? off.toNumber() : off.div(expected.abs()).toNumber(),
    ulp: off.div(exactly(unitInLastPlace(expected.toNumber()))).toNumber(),
  };
}
