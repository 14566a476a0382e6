import { fc, test } from "@fast-check/vitest";
import {
  decimalMarkOf,
  type FormatLengthOptions,
  formatLength,
  type InchDenominator,
  type LengthUnit,
  millimetres,
  parseLength,
  roundLength,
} from "@tapewise/units";
import { expect } from "vitest";
import { ruleArbitrary } from "./units-arbitraries.ts";
import { decimalText } from "./units-exact.ts";

const decimalFormat: fc.Arbitrary<FormatLengthOptions> = fc.record({
  unit: fc.constantFrom("mm", "cm", "m", "in", "ft", "ft-in"),
  decimals: fc.integer({ min: 0, max: 9 }),
  rounding: ruleArbitrary,
  locale: fc.constantFrom("en-GB", "de-DE", "fr-CH", "sv", "ar-EG", undefined),
});

const fractionFormat: fc.Arbitrary<FormatLengthOptions> = fc.record({
  unit: fc.constantFrom("in", "ft-in"),
  denominator: fc.constantFrom<InchDenominator[]>(2, 4, 8, 16, 32, 64),
  rounding: ruleArbitrary,
  fractionStyle: fc.constantFrom("slash", "character", undefined),
});

const formatArbitrary = fc.oneof(decimalFormat, fractionFormat);

const lengthArbitrary = fc.oneof(
  fc
    .bigInt(-3_000_000_000n, 3_000_000_000n)
    .map((nanometres) => millimetres(Number(decimalText(nanometres, 6)))),
  fc.double({ min: -3000, max: 3000, noNaN: true }).map(millimetres),
);

const unitOf = ({ unit }: FormatLengthOptions): LengthUnit => (unit === "ft-in" ? "in" : unit);

/** The rounded length that a format writes, by way of `roundLength`. */
function roundedBy(mm: number, options: FormatLengthOptions): number {
  const step = options.denominator === undefined ? Number(`1e-${options.decimals}`) : 1 / options.denominator;
  return roundLength(millimetres(mm), { to: unitOf(options), step }, options.rounding) + 0;
}

test.prop([lengthArbitrary, formatArbitrary])(
  "law: what is written is read back as the rounded length",
  (mm, options) => {
    const text = formatLength(mm, options);
    const rounded = roundedBy(mm, options);
    if (rounded === 0) {
      expect(text).toMatch(/^0([.,]0+)? (mm|cm|m|in|ft)$/);
      return;
    }
    expect(text.startsWith("−")).toBe(rounded < 0);
    const locale = options.denominator === undefined ? options.locale : undefined;
    const decimalMark = locale === undefined ? "." : decimalMarkOf(locale);
    const reading = parseLength(text.replace("−", ""), { decimalMark });
    expect(reading.mm).toBe(Math.abs(rounded));
    expect(reading.unit).toBe(unitOf(options));
  },
);

test.prop([lengthArbitrary, formatArbitrary])(
  "law: without three decimals the mark need not be known to read it back",
  (mm, options) => {
    fc.pre(options.decimals !== 3);
    const rounded = roundedBy(mm, options);
    fc.pre(rounded !== 0);
    expect(parseLength(formatLength(mm, options).replace("−", "")).mm).toBe(Math.abs(rounded));
  },
);

test.prop([lengthArbitrary, formatArbitrary])("law: writing what was read writes the same", (mm, options) => {
  const rounded = roundedBy(mm, options);
  // Nine decimals of a metre-sized length are more than a double keeps.
  fc.pre((options.decimals ?? 0) <= 6);
  expect(formatLength(millimetres(rounded), options)).toBe(formatLength(mm, options));
});

test.prop([lengthArbitrary, formatArbitrary])("law: inches beside feet are below twelve", (mm, options) => {
  const text = formatLength(mm, options);
  const [, inches = "0 in"] = text.split(" ft ");
  if (!/^0[.,0]* in$/.test(inches)) {
    expect(parseLength(inches.replace(",", "."), { decimalMark: "." }).mm).toBeLessThan(304.8);
  }
  if (unitOf(options) !== "in" || options.unit === "in") expect(text).not.toContain(" ft ");
});

test.prop([lengthArbitrary, fractionFormat])(
  "law: fractions are in lowest terms and below one",
  (mm, options) => {
    const plain = formatLength(mm, { ...options, fractionStyle: "slash" } as FormatLengthOptions);
    const [, top, bottom] = /(\d+)\/(\d+)/.exec(plain) ?? [];
    if (top === undefined || bottom === undefined) return;
    expect(Number(top) % 2).toBe(1);
    expect(Number(top)).toBeLessThan(Number(bottom));
    expect([2, 4, 8, 16, 32, 64]).toContain(Number(bottom));
  },
);

test.prop([lengthArbitrary, decimalFormat])(
  "law: a locale changes the decimal mark and nothing else",
  (mm, options) => {
    const { locale: _locale, ...plain } = options as FormatLengthOptions & { readonly locale?: string };
    expect(formatLength(mm, options).replace(",", ".")).toBe(formatLength(mm, plain as FormatLengthOptions));
  },
);
