import {
  describeUnit,
  formatLength,
  fromMillimetres,
  type LengthUnit,
  lengthUnits,
  millimetres,
  parseLength,
  roundLength,
  safeParseLength,
  toMillimetres,
} from "@tapewise/units";
import convert from "convert-units";
import { describe, expect, test } from "vitest";
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

describe("units by definition", () => {
  test.each(factors)("1 %s is %s m", (unit, metres) => {
    expect(toMillimetres(1, unit)).toBe(Number(`${metres}e3`));
    expect(parseLength(`1 ${unit}`).mm).toBe(Number(`${metres}e3`));
  });

  test("the foot is the international one, two parts in a million shorter than the US survey foot", () => {
    expect(toMillimetres(1, "ft")).toBe(304.8);
    expect(toMillimetres(1, "ft") / Number(surveyFootMm)).toBeCloseTo(0.999998, 12);
  });
});

describe("inch fractions are exact", () => {
  test.each(inchFractions)("%s in", (fraction, decimal, mm) => {
    expect(parseLength(`${fraction} in`).mm).toBe(Number(mm));
    expect(parseLength(`${decimal} in`).mm).toBe(Number(mm));
    expect(toMillimetres(Number(decimal), "in")).toBe(Number(mm));
    expect(fromMillimetres(millimetres(Number(mm)), "in")).toBe(Number(decimal));
  });

  test.each(writtenLengths)("%s", (text, mm) => {
    expect(parseLength(text).mm).toBe(Number(mm));
  });

  test.each(millimetresInInches)("%s mm in inches", (mm, inches) => {
    expect(fromMillimetres(millimetres(Number(mm)), "in")).toBe(Number(inches));
  });

  test.each(binaryPitfalls)("%s in, which a plain product misses", (inches, mm) => {
    expect(Number(inches) * 25.4).not.toBe(Number(mm));
    expect(toMillimetres(Number(inches), "in")).toBe(Number(mm));
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
    expect(formatLength(length, { unit: "in", denominator, rounding: "half-even" })).toBe(`${inches} in`);
    const rounded = roundLength(length, { to: "in", step: 1 / denominator }, "half-even");
    expect(rounded).toBe(Number(roundedMm));
  });
});

describe("rounding by published rules", () => {
  test.each(roundings)("%s: %s to %s", (_source, value, step, ruleA, ruleB) => {
    const grid = { to: "mm", step: Number(step) } as const;
    expect(roundLength(millimetres(Number(value)), grid, "half-even")).toBe(Number(ruleA));
    expect(roundLength(millimetres(Number(value)), grid, "half-away-from-zero")).toBe(Number(ruleB));
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
      expect(Math.abs(ours / theirs - 1)).toBeLessThanOrEqual(4 * Number.EPSILON);
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
