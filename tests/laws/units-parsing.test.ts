import { fc, test } from "@fast-check/vitest";
import {
  lengthUnits,
  parseLength,
  parseMagnitude,
  safeParseLength,
  safeParseLengthUnit,
  safeParseMagnitude,
  unitsIssues,
} from "@tapewise/units";
import { describe, expect } from "vitest";
import { tokenize } from "../../packages/units/src/tokenize.ts";
import {
  decimalArbitrary,
  type InchFraction,
  inchFractionArbitrary,
  spaceArbitrary,
  unitArbitrary,
} from "./units-arbitraries.ts";
import { compare, decimalText, isNearestDouble, NANOMETRES } from "./units-exact.ts";

const MM = 1_000_000n;
const codes = Object.keys(unitsIssues);

/** Three decimals may be thousands, which has laws of its own. */
const clearDecimal = decimalArbitrary.filter(({ decimals }) => decimals !== 3);

const fractionText = ({ whole, numerator, denominator }: InchFraction): string =>
  numerator === 0 ? String(whole) : `${whole} ${numerator}/${denominator}`;

describe("law: a reading is the double nearest to what was written", () => {
  test.prop([clearDecimal, unitArbitrary])("with decimals", ({ units, decimals }, unit) => {
    const { mm, stepMm } = parseLength(`${decimalText(units, decimals)} ${unit}`);
    const scale = 10n ** BigInt(decimals) * MM;
    expect(isNearestDouble(mm, [units * NANOMETRES[unit], scale])).toBe(true);
    expect(isNearestDouble(stepMm, [NANOMETRES[unit], scale])).toBe(true);
  });

  test.prop([inchFractionArbitrary])("with a fraction", (inches) => {
    const { mm, stepMm } = parseLength(`${fractionText(inches)} in`);
    const { whole, numerator, denominator } = inches;
    const sixtyFourths = (64 / denominator) * (whole * denominator + numerator);
    expect(isNearestDouble(mm, [BigInt(sixtyFourths) * 396_875n, MM])).toBe(true);
    expect(stepMm).toBe(25.4 / (numerator === 0 ? 1 : denominator));
  });

  test.prop([fc.bigInt(1n, 10n ** 40n), fc.bigInt(1n, 10n ** 15n)])("with any fraction", (top, bottom) => {
    const { mm } = parseLength(`${top}/${bottom} in`);
    expect(isNearestDouble(mm, [top * NANOMETRES.in, bottom * MM])).toBe(true);
  });
});

test.prop([clearDecimal, unitArbitrary])(
  "law: a decimal comma reads as a point",
  ({ units, decimals }, unit) => {
    const { text: _point, ...point } = parseLength(`${decimalText(units, decimals)} ${unit}`);
    expect(parseLength(`${decimalText(units, decimals, ",")} ${unit}`)).toMatchObject(point);
  },
);

test.prop([inchFractionArbitrary, spaceArbitrary, spaceArbitrary, spaceArbitrary, spaceArbitrary])(
  "law: spaces of any kind between number, fraction and unit change nothing",
  (inches, before, around, between, after) => {
    const { whole, numerator, denominator } = inches;
    const { text: _plain, ...plain } = parseLength(`${whole} ${numerator}/${denominator} in`);
    // One space at least parts the whole number from the fraction.
    const spaced = `${before}${whole} ${around}${numerator}${around}/${around}${denominator}${between}in${after}`;
    expect(parseLength(spaced)).toMatchObject(plain);
  },
);

test.prop([inchFractionArbitrary.filter(({ numerator }) => numerator > 0)])(
  "law: every way to write a mixed number reads the same",
  ({ whole, numerator, denominator }) => {
    const { text: _plain, ...plain } = parseLength(`${whole} ${numerator}/${denominator} in`);
    const raised = (digits: number, from: string): string =>
      [...String(digits)].map((digit) => from[Number(digit)]).join("");
    const small = `${raised(numerator, "⁰¹²³⁴⁵⁶⁷⁸⁹")}⁄${raised(denominator, "₀₁₂₃₄₅₆₇₈₉")}`;
    const wide = raised(whole, "０１２３４５６７８９");
    for (const text of [
      `${whole}-${numerator}/${denominator} inches`,
      `+${whole} ${numerator}/${denominator}"`,
      `${whole} ${numerator}⁄${denominator}″`,
      `${whole}${small} in.`,
      `${wide} ${numerator}／${denominator} ＩＮ`,
      `${whole} ${numerator}/${denominator} in`.toUpperCase(),
    ]) {
      expect({ ...parseLength(text), text: "" }).toEqual({ ...plain, text: "" });
    }
  },
);

test.prop([fc.integer({ min: 0, max: 20 }), inchFractionArbitrary.filter(({ whole }) => whole < 12)])(
  "law: feet and inches are as many inches",
  (feet, inches) => {
    const { text: _text, ...total } = parseLength(
      `${fractionText({ ...inches, whole: 12 * feet + inches.whole })} in`,
    );
    for (const text of [
      `${feet} ft ${fractionText(inches)} in`,
      `${feet}' ${fractionText(inches)}"`,
      `${feet}′-${fractionText(inches)}″`,
      `${feet} feet, ${fractionText(inches)} inches`,
      `${feet} foot and ${fractionText(inches)} ins`,
      `${feet}'${fractionText(inches)}`,
    ]) {
      expect(parseLength(text)).toMatchObject(total);
    }
  },
);

test.prop([fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 99 })])(
  "law: metres and centimetres are as many centimetres",
  (metres, centimetres) => {
    const { text: _text, ...total } = parseLength(`${100 * metres + centimetres} cm`);
    expect(parseLength(`${metres} m ${centimetres} cm`)).toMatchObject(total);
    expect(parseLength(`${metres}m${String(centimetres).padStart(2, "0")}`)).toMatchObject(total);
  },
);

test.prop([clearDecimal, unitArbitrary, unitArbitrary])(
  "law: the unit in the text wins, and the caller's stands in for a missing one",
  ({ units, decimals }, written, given) => {
    const number = decimalText(units, decimals);
    const { text: _text, ...reading } = parseLength(`${number} ${written}`);
    expect(parseLength(`${number} ${written}`, { unit: given })).toMatchObject(reading);
    expect(parseLength(number, { unit: written })).toMatchObject(reading);
    expect(safeParseLength(number).issues.map(({ code }) => code)).toEqual(["length-no-unit"]);
  },
);

test.prop([clearDecimal, clearDecimal, unitArbitrary])(
  "law: reading keeps the order of numbers",
  (a, b, unit) => {
    const order = compare([a.units, 10n ** BigInt(a.decimals)], [b.units, 10n ** BigInt(b.decimals)]);
    const read = [a, b].map(
      ({ units, decimals }) => parseLength(`${decimalText(units, decimals)} ${unit}`).mm,
    );
    expect(Math.sign((read[0] ?? 0) - (read[1] ?? 0)) + 0).toBe(order + 0);
  },
);

test.prop([fc.integer({ min: 1, max: 999 }), fc.integer({ min: 0, max: 999 }), fc.constantFrom(",", ".")])(
  "law: what is ambiguous is refused with two readings that can be typed, and read when the mark is known",
  (thousands, rest, separator) => {
    const tail = String(rest).padStart(3, "0");
    const text = `${thousands}${separator}${tail} mm`;
    const [issue] = safeParseLength(text).issues;
    expect(issue?.code).toBe("length-ambiguous-separator");
    const grouped = 1000 * thousands + rest;
    const decimal = Number(`${thousands}.${tail}`);
    expect(parseLength(String(issue?.facts.grouped)).mm).toBe(grouped);
    expect(parseLength(String(issue?.facts.decimal)).mm).toBe(decimal);
    const [point, comma] = separator === "." ? [decimal, grouped] : [grouped, decimal];
    expect(parseLength(text, { decimalMark: "." }).mm).toBe(point);
    expect(parseLength(text, { decimalMark: "," }).mm).toBe(comma);
  },
);

test.prop([clearDecimal, fc.option(unitArbitrary, { nil: undefined })])(
  "law: a magnitude is the exact number, and its denominator the step",
  ({ units, decimals }, unit) => {
    const { numerator, denominator, ...rest } = parseMagnitude(
      `${decimalText(units, decimals)}${unit ?? ""}`,
    );
    expect([numerator, denominator, rest.unit]).toEqual([units, 10n ** BigInt(decimals), unit]);
  },
);

describe("law: whatever is given, the answer is a positive length or a coded issue", () => {
  const check = (input: unknown): void => {
    const outcomes = [
      safeParseLength(input),
      safeParseLength(input, { unit: "cm" }),
      safeParseLength(input, { unit: "mm", decimalMark: "," }),
    ];
    for (const outcome of outcomes) {
      if (outcome.ok) {
        expect(outcome.value.mm).toBeGreaterThan(0);
        expect(outcome.value.mm).toBeLessThan(Infinity);
        expect(outcome.value.stepMm).toBeGreaterThan(0);
        expect(outcome.value.stepMm).toBeLessThan(Infinity);
        expect(lengthUnits).toContain(outcome.value.unit);
        expect(outcome.value.text).toBe(input);
      }
      for (const { code, message, expected } of outcome.issues) {
        expect(codes).toContain(code);
        // No fact is missing from a text, and no control character is in it.
        expect(`${message}${expected}`).not.toMatch(/\p{Cc}|undefined/u);
        if (typeof input === "string" && !input.includes("{"))
          expect(`${message}${expected}`).not.toContain("{");
      }
      expect(outcome.issues).toHaveLength(outcome.ok ? 0 : 1);
    }
    const magnitude = safeParseMagnitude(input);
    expect(magnitude.ok ? magnitude.value.numerator > 0n && magnitude.value.denominator > 0n : true).toBe(
      true,
    );
    const unit = safeParseLengthUnit(input);
    expect(unit.ok || codes.includes(unit.issues[0].code)).toBe(true);
  };

  test.prop([fc.string({ unit: "binary", maxLength: 80 })], { numRuns: 1000 })("any characters", check);

  test.prop(
    [fc.array(fc.constantFrom(..."0123456789.,/'\"-+ ⅜⁄″’inftcm²₂°％".split("")), { maxLength: 30 })],
    {
      numRuns: 2000,
    },
  )("characters that lengths are made of", (characters) => check(characters.join("")));

  test.prop(
    [
      fc.array(
        fc.constantFrom(
          "1",
          "18",
          "3/8",
          "43.2",
          "1,750",
          "0",
          "in",
          "ft",
          "cm",
          "m",
          "'",
          '"',
          "-",
          ",",
          "and",
          "⅜",
          "kg",
          "x",
        ),
        { maxLength: 8 },
      ),
      fc.constantFrom("", " "),
    ],
    { numRuns: 2000 },
  )("parts of lengths in any order", (parts, space) => check(parts.join(space)));

  test.prop([fc.anything()])("any value", check);
});

describe("law: reading takes work in proportion to the text", () => {
  const piece = fc.constantFrom("1", ".", ",", "1.", "1,1", "''", "'", "i", "in.", "⅜", "⁄", " ", "³", "-");

  test.prop([fc.array(piece, { maxLength: 40 }), fc.integer({ min: 2, max: 200 })])(
    "the tokens part the text: each character is in one of them",
    (pieces, times) => {
      const text = pieces.join("").repeat(times);
      const characters = tokenize(text).join("").length;
      // NFKC makes three characters of a fraction, and a word drops its point.
      expect(characters).toBeLessThanOrEqual(3 * text.length);
      expect(tokenize(text).every((token) => token.length > 0)).toBe(true);
      expect(tokenize(text).length).toBeLessThanOrEqual(3 * text.length);
    },
  );

  test.prop([fc.array(piece, { minLength: 1, maxLength: 40 })], { numRuns: 10 })(
    "more than 64 characters are refused whatever they are",
    (pieces) => {
      const text = pieces.join("").repeat(1_000_000);
      const { issues } = safeParseLength(text);
      expect(issues.map(({ code, facts }) => [code, facts.characters])).toEqual([
        ["length-too-long", text.length],
      ]);
    },
  );
});
