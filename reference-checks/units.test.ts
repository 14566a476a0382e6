import { unwrap } from "@tapewise/outcome";
import {
  describeUnit,
  formatLength,
  fromMillimetres,
  type LengthUnit,
  lengthUnits,
  millimetres,
  parseLength,
  parseMagnitude,
  roundLength,
  safeParseLength,
  safeParseMagnitude,
  toMillimetres,
} from "@tapewise/units";
import convert from "convert-units";
import { describe, expect, test } from "vitest";
import { type Against, against, type Reference } from "./table/against.ts";
import {
  binaryPitfalls,
  factors,
  inchFractions,
  millimetresInInches,
  nearestFractions,
  roundings,
  surveyFootMm,
  writtenLengths,
} from "./units-figures.ts";

const DOUBLE = "the nearest double to the exact product";
const EXACT = "recomputed with exact fractions (Python 3.11)";
const row =
  (source: string, origin: Reference["origin"]) =>
  (name: string): Against =>
    against({ of: `units.${name}`, source, origin, why: DOUBLE });
const factor = row(
  "NIST SP 811 (2008), App. B.8 and B.9; yard and pound agreement of 1959",
  "printed (from memory)",
);
const fractions = row("the inch of 25.4 mm, in exact fractions", EXACT);
const nearest = row("nearest fractions of an inch, ties to even", EXACT);

describe("units by definition", () => {
  test.each(factors)("1 %s is %s m", (unit, metres) => {
    factor("toMillimetres").same(toMillimetres(1, unit), Number(`${metres}e3`));
    factor("parseLength").same(parseLength(`1 ${unit}`).mm, Number(`${metres}e3`));
    factor("safeParseLength").same(unwrap(safeParseLength(`1 ${unit}`)).mm, Number(`${metres}e3`));
  });

  test("the foot is the international one, two parts in a million shorter than the US survey foot", () => {
    expect(toMillimetres(1, "ft")).toBe(304.8);
    expect(toMillimetres(1, "ft") / Number(surveyFootMm)).toBeCloseTo(0.999998, 12);
  });
});

describe("inch fractions are exact", () => {
  test.each(inchFractions)("%s in", (fraction, decimal, mm) => {
    fractions("parseLength").same(parseLength(`${fraction} in`).mm, Number(mm));
    fractions("parseLength").same(parseLength(`${decimal} in`).mm, Number(mm));
    for (const [name, { numerator, denominator }] of [
      ["parseMagnitude", parseMagnitude(`${fraction} in`)],
      ["safeParseMagnitude", unwrap(safeParseMagnitude(`${fraction} in`))],
    ] as const) {
      fractions(name).same(Number(numerator) / Number(denominator), Number(decimal));
    }
    fractions("toMillimetres").same(toMillimetres(Number(decimal), "in"), Number(mm));
    fractions("fromMillimetres").same(fromMillimetres(millimetres(Number(mm)), "in"), Number(decimal));
  });

  test.each(writtenLengths)("%s", (text, mm) => {
    fractions("parseLength").same(parseLength(text).mm, Number(mm));
  });

  test.each(millimetresInInches)("%s mm in inches", (mm, inches) => {
    fractions("fromMillimetres").same(fromMillimetres(millimetres(Number(mm)), "in"), Number(inches));
  });

  test.each(binaryPitfalls)("%s in, which a plain product misses", (inches, mm) => {
    expect(Number(inches) * 25.4).not.toBe(Number(mm));
    fractions("toMillimetres").same(toMillimetres(Number(inches), "in"), Number(mm));
  });

  test("the mile is refused by its name, not misread", () => {
    const outcome = safeParseLength("1 mi");
    expect(outcome.issues.map(({ code, facts }) => [code, facts.unit])).toEqual([
      ["length-unit-unread", "mi"],
    ]);
  });
});

describe("the nearest fraction of an inch", () => {
  test.each(nearestFractions)("%s mm to 1/%i in", (mm, denominator, inches, roundedMm) => {
    const length = millimetres(Number(mm));
    nearest("formatLength").same(
      formatLength(length, { unit: "in", denominator, rounding: "half-even" }),
      `${inches} in`,
    );
    const rounded = roundLength(length, { to: "in", step: 1 / denominator }, "half-even");
    nearest("roundLength").same(rounded, Number(roundedMm));
  });
});

describe("rounding by published rules", () => {
  test.each(roundings)("%s: %s to %s", (_source, value, step, ruleA, ruleB) => {
    const grid = { to: "mm", step: Number(step) } as const;
    const rule = against({
      of: "units.roundLength",
      source: "NIST SP 811 B.7.1; ISO 80000-1:2009, Annex B; ASTM E29",
      origin: "printed (from memory)",
      why: "the rounded decimal is one double",
    });
    rule.same(roundLength(millimetres(Number(value)), grid, "half-even"), Number(ruleA));
    rule.same(roundLength(millimetres(Number(value)), grid, "half-away-from-zero"), Number(ruleB));
  });
});

/**
 * convert-units 2.3.4 is an independent implementation, right to a few units in the last place within one
 * system of units. Between systems it is not: see the last test.
 */
describe("convert-units", () => {
  const within: readonly (readonly [LengthUnit, LengthUnit])[] = [
    ["mm", "cm"],
    ["mm", "m"],
    ["cm", "mm"],
    ["cm", "m"],
    ["m", "mm"],
    ["m", "cm"],
    ["in", "ft"],
    ["ft", "in"],
  ];

  test.each(within)("agrees from %s to %s", (from, to) => {
    for (let step = 1; step <= 500; step += 1) {
      const value = step * 0.37;
      const ours = fromMillimetres(toMillimetres(value, from), to);
      const theirs = convert(value).from(from).to(to);
      against({
        of: ["units.fromMillimetres", "units.toMillimetres"],
        source: "convert-units 2.3.4, within one system of units",
        origin: "computed by convert-units at every run",
        why: "its products are rounded four times",
      }).relative(ours, theirs, 4 * Number.EPSILON);
    }
  });

  test.each(lengthUnits)("calls %s the same, in American spelling", (unit) => {
    const american = (name: string): string => name.replace("metre", "meter");
    const { name, plural } = describeUnit(unit);
    const { singular, plural: theirPlural } = convert().describe(unit);
    expect([american(name), american(plural)]).toEqual([singular.toLowerCase(), theirPlural.toLowerCase()]);
  });

  test("disagrees between inches and millimetres, because it takes 1 m for 3.28084 ft", () => {
    // 1000 mm / (3.28084 * 12 in) = 25.399999187… mm; when this fails, the package has been put right.
    expect(convert(1).from("in").to("mm")).toBeCloseTo(1000 / (3.28084 * 12), 12);
    expect(convert(40).from("in").to("mm")).toBeLessThan(1016);
    expect(toMillimetres(40, "in")).toBe(1016);
  });
});
