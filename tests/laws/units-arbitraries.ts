import { fc } from "@fast-check/vitest";
import { type LengthUnit, lengthUnits, type RoundingRule, roundingRules } from "@tapewise/units";

export const unitArbitrary: fc.Arbitrary<LengthUnit> = fc.constantFrom(...lengthUnits);

export const ruleArbitrary: fc.Arbitrary<RoundingRule> = fc.constantFrom(...roundingRules);

/** A decimal above zero: `units` of 10 to the minus `decimals`, at most eleven digits. */
export interface Decimal {
  readonly units: bigint;
  readonly decimals: number;
}

export const decimalArbitrary: fc.Arbitrary<Decimal> = fc.record({
  units: fc.oneof(fc.bigInt(1n, 9_999n), fc.bigInt(1n, 99_999_999_999n)),
  decimals: fc.integer({ min: 0, max: 6 }),
});

/** A number of inches with a fraction as tapes have them. */
export interface InchFraction {
  readonly whole: number;
  readonly numerator: number;
  readonly denominator: 2 | 4 | 8 | 16 | 32 | 64;
}

export const inchFractionArbitrary: fc.Arbitrary<InchFraction> = fc
  .record({
    whole: fc.integer({ min: 0, max: 200 }),
    denominator: fc.constantFrom(2 as const, 4 as const, 8 as const, 16 as const, 32 as const, 64 as const),
    place: fc.integer({ min: 0, max: 63 }),
  })
  .map(({ whole, denominator, place }) => ({ whole, denominator, numerator: place % denominator }))
  .filter(({ whole, numerator }) => whole + numerator > 0);

/** Every space that people and word processors put between a number and its unit, and none. */
export const spaceArbitrary: fc.Arbitrary<string> = fc.constantFrom(
  "",
  " ",
  "  ",
  "\t",
  "\u00a0",
  "\u2009",
  "\u202f",
  "\u3000",
  "\ufeff",
);
