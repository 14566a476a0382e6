import { fc } from "@fast-check/vitest";
import type { QuantileType } from "@tapewise/statistics";

/** Standard deviations from the mean, as far out as a double can tell the tail from nothing. */
export const anyZ: fc.Arbitrary<number> = fc.double({ min: -37, max: 37, noNaN: true });

/** The same where nearly all of a distribution lies, which {@link anyZ} seldom meets. */
export const nearZ: fc.Arbitrary<number> = fc.oneof(
  fc.integer({ min: -6000, max: 6000 }).map((thousandths) => thousandths / 1000),
  fc.double({ min: -6, max: 6, noNaN: true }),
);

/** Two bounds in order, or equal. */
export function ordered(bound: fc.Arbitrary<number>): fc.Arbitrary<readonly [number, number]> {
  return fc.tuple(bound, bound).map(([a, b]) => (a <= b ? [a, b] : [b, a]));
}

/** Degrees of freedom, evenly spread over their order of magnitude. */
export const anyDf: fc.Arbitrary<number> = fc
  .double({ min: Math.log(0.5), max: Math.log(1e6), noNaN: true })
  .map(Math.exp);

/** Shares that are neither 0 nor 1, tails among them. */
export const anyShare: fc.Arbitrary<number> = fc.oneof(
  fc.integer({ min: 1, max: 9999 }).map((i) => i / 10000),
  fc.double({ min: -40, max: -0.01, noNaN: true }).map(Math.exp),
);

export const anyRho: fc.Arbitrary<number> = fc.oneof(
  fc.double({ min: -1, max: 1, noNaN: true }),
  fc.constantFrom(-1, -0.925, 0, 0.925, 1),
  fc
    .tuple(fc.boolean(), fc.double({ min: -20, max: -1, noNaN: true }))
    .map(([negative, power]) => (negative ? -1 : 1) * (1 - Math.exp(power))),
);

/** Readings in tenths of a millimetre, as a tape gives them. */
export const anySample: fc.Arbitrary<number[]> = fc.array(
  fc.integer({ min: -20000, max: 20000 }).map((tenths) => tenths / 10),
  { minLength: 1, maxLength: 40 },
);

export const anyType: fc.Arbitrary<QuantileType> = fc.constantFrom<QuantileType[]>(1, 2, 3, 4, 5, 6, 7, 8, 9);

/** |a − b| in units of the larger of the two; 0 when both are 0. */
export function relativeGap(a: number, b: number): number {
  return a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b));
}
