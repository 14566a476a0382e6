import type { Outcome } from "@tapewise/outcome";
import {
  formatLength,
  fromMillimetres,
  type LengthReading,
  type LengthUnit,
  type Magnitude,
  type Millimetres,
  millimetres,
  parseLength,
  type RoundingRule,
  roundLength,
  safeParseLength,
  safeParseLengthUnit,
  safeParseMagnitude,
  toMillimetres,
} from "@tapewise/units";
import { describe, expect, expectTypeOf, test } from "vitest";

const length = millimetres(432);

describe("what must not compile", () => {
  test("a bare number where a length is asked for", () => {
    // @ts-expect-error nobody knows the unit of 432
    expect(fromMillimetres(432, "cm")).toBe(43.2);
    // @ts-expect-error nobody knows the unit of 432
    expect(roundLength(432, { to: "cm", step: 1 }, "half-even")).toBe(430);
    // @ts-expect-error a sum of lengths is a bare number until it is named a length again
    const sum: Millimetres = length + length;
    expect(sum).toBe(864);
  });

  test("a conversion without a unit, or with one that is none", () => {
    // @ts-expect-error there is no default unit
    expect(() => toMillimetres(43)).toThrow();
    // @ts-expect-error the yard is not read
    expect(() => toMillimetres(43, "yd")).toThrow();
    // @ts-expect-error feet and inches are a way to write a length, not a unit
    expect(() => toMillimetres(43, "ft-in")).toThrow();
  });

  test("rounding without a rule", () => {
    // @ts-expect-error there is no default rule
    expect(() => roundLength(length, { to: "cm", step: 1 })).toThrow();
    // @ts-expect-error nearest does not say what becomes of a tie
    expect(() => roundLength(length, { to: "cm", step: 1 }, "nearest")).toThrow();
    // @ts-expect-error there is no default rule
    expect(() => formatLength(length, { unit: "cm", decimals: 1 })).toThrow();
  });

  test("a format that does not say how fine it is, or says it twice", () => {
    // @ts-expect-error neither decimals nor a denominator
    expect(() => formatLength(length, { unit: "in", rounding: "up" })).toThrow();
    // @ts-expect-error both decimals and a denominator
    expect(formatLength(length, { unit: "in", decimals: 1, denominator: 2, rounding: "up" })).toBe(
      "17 1/2 in",
    );
    // @ts-expect-error a metric tape has no eighths
    expect(() => formatLength(length, { unit: "cm", denominator: 8, rounding: "up" })).toThrow();
    // @ts-expect-error an inch tape has no thirds
    expect(() => formatLength(length, { unit: "in", denominator: 3, rounding: "up" })).toThrow();
  });

  test("taking a reading that may be a failure", () => {
    const outcome = safeParseLength("43.2 cm");
    // @ts-expect-error a failure has no value
    expect(outcome.value.mm).toBe(432);
    // @ts-expect-error parseLength is for text; safeParseLength takes what is not known to be text
    expect(() => parseLength(43.2)).toThrow();
  });

  test("changing a reading", () => {
    const reading = parseLength("43.2 cm");
    // @ts-expect-error a reading is read-only
    reading.unit = "in";
    expect(reading.unit).toBe("in");
  });
});

test("what functions return", () => {
  expectTypeOf(safeParseLength).returns.toEqualTypeOf<Outcome<LengthReading>>();
  expectTypeOf(safeParseMagnitude).returns.toEqualTypeOf<Outcome<Magnitude>>();
  expectTypeOf(safeParseLengthUnit).returns.toEqualTypeOf<Outcome<LengthUnit>>();
  expectTypeOf(toMillimetres).returns.toEqualTypeOf<Millimetres>();
  expectTypeOf(fromMillimetres).returns.toEqualTypeOf<number>();
  expectTypeOf<LengthReading["stepMm"]>().toEqualTypeOf<Millimetres>();
  expectTypeOf<Parameters<typeof roundLength>[2]>().toEqualTypeOf<RoundingRule>();
  // A length is a number for arithmetic.
  expectTypeOf(length).toExtend<number>();
  expect(length / 2).toBe(216);
});
