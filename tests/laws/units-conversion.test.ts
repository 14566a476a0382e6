import { fc, test } from "@fast-check/vitest";
import {
  fromMillimetres,
  lengthUnits,
  type Millimetres,
  millimetres,
  parseLength,
  toMillimetres,
} from "@tapewise/units";
import { describe, expect } from "vitest";
import { decimalArbitrary, unitArbitrary } from "./units-arbitraries.ts";
import { decimalText, type Exact, exactOfDouble, isNearestDouble, NANOMETRES } from "./units-exact.ts";

const MM = 1_000_000n;

/** What a double is printed as, exactly; `toFixed` and friends would round. */
function printedDecimal(value: number): Exact {
  const [, sign, whole = "0", decimals = "", exponent = "0"] =
    /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value)) ?? [];
  const digits = BigInt(whole + decimals) * (sign === "-" ? -1n : 1n);
  const power = Number(exponent) - decimals.length;
  return power >= 0 ? [digits * 10n ** BigInt(power), 1n] : [digits, 10n ** BigInt(-power)];
}

const times = ([n, d]: Exact, top: bigint, bottom: bigint): Exact => [n * top, d * bottom];

const anyNumber = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e300, max: 1e300 });

describe("law: a conversion is the double nearest to the exact result", () => {
  test.prop([decimalArbitrary, unitArbitrary])("of a decimal to millimetres", ({ units, decimals }, unit) => {
    const mm = toMillimetres(Number(decimalText(units, decimals)), unit);
    expect(isNearestDouble(mm, [units * NANOMETRES[unit], 10n ** BigInt(decimals) * MM])).toBe(true);
  });

  test.prop([decimalArbitrary, unitArbitrary])(
    "of decimal millimetres to a unit",
    ({ units, decimals }, unit) => {
      const value = fromMillimetres(millimetres(Number(decimalText(units, decimals))), unit);
      expect(isNearestDouble(value, [units * MM, 10n ** BigInt(decimals) * NANOMETRES[unit]])).toBe(true);
    },
  );

  test.prop([anyNumber, unitArbitrary])("of any double, as it is printed, to millimetres", (value, unit) => {
    expect(
      isNearestDouble(toMillimetres(value, unit), times(printedDecimal(value), NANOMETRES[unit], MM)),
    ).toBe(true);
  });

  test.prop([anyNumber, unitArbitrary])("of any double, as it is printed, to a unit", (value, unit) => {
    const converted = fromMillimetres(millimetres(value), unit);
    expect(isNearestDouble(converted, times(printedDecimal(value), MM, NANOMETRES[unit]))).toBe(true);
  });

  test.prop([fc.integer({ min: 1, max: 64 * 200 })])(
    "of every 1/64 in, without any rounding but the last",
    (places) => {
      // 1/64 in = 396 875 nm
      expect(isNearestDouble(toMillimetres(places / 64, "in"), [BigInt(places) * 396_875n, MM])).toBe(true);
      expect(fromMillimetres(toMillimetres(places / 64, "in"), "in")).toBe(places / 64);
    },
  );
});

test.prop([decimalArbitrary, unitArbitrary])(
  "law: a number of up to eleven digits comes back unchanged from millimetres",
  ({ units, decimals }, unit) => {
    const value = Number(decimalText(units, decimals));
    expect(fromMillimetres(toMillimetres(value, unit), unit)).toBe(value);
  },
);

test.prop([decimalArbitrary, fc.constantFrom("mm", "cm", "m"), fc.constantFrom("mm", "cm", "m")])(
  "law: going round through another metric unit changes nothing",
  ({ units, decimals }, from, to) => {
    const mm = toMillimetres(Number(decimalText(units, decimals)), from);
    expect(toMillimetres(fromMillimetres(mm, to), to)).toBe(mm);
  },
);

test.prop([fc.integer({ min: 0, max: 10_000 })])(
  "law: a foot is twelve inches, a metre a hundred centimetres",
  (count) => {
    expect(toMillimetres(count, "ft")).toBe(toMillimetres(12 * count, "in"));
    expect(fromMillimetres(toMillimetres(count, "ft"), "in")).toBe(12 * count);
    expect(toMillimetres(count, "m")).toBe(toMillimetres(100 * count, "cm"));
  },
);

test.prop([anyNumber, anyNumber, unitArbitrary])(
  "law: conversion keeps the order of lengths",
  (a, b, unit) => {
    const [less, more] = a <= b ? [a, b] : [b, a];
    expect(toMillimetres(less, unit)).toBeLessThanOrEqual(toMillimetres(more, unit));
    expect(fromMillimetres(millimetres(less), unit)).toBeLessThanOrEqual(
      fromMillimetres(millimetres(more), unit),
    );
  },
);

test.prop([anyNumber, unitArbitrary])(
  "law: a length and its opposite convert to opposites",
  (value, unit) => {
    // Added to zero, because toBe tells 0 from -0.
    expect(toMillimetres(-value, unit) + 0).toBe(-toMillimetres(value, unit) + 0);
  },
);

test.prop([decimalArbitrary, unitArbitrary])(
  "law: a number converts as its text is read",
  ({ units, decimals }, unit) => {
    const text = decimalText(units, decimals);
    expect(toMillimetres(Number(text), unit)).toBe(parseLength(`${text} ${unit}`, { decimalMark: "." }).mm);
  },
);

test.prop([anyNumber])("law: a millimetre is a millimetre", (value) => {
  expect(toMillimetres(value, "mm")).toBe(value + 0);
  expect(fromMillimetres(value as Millimetres, "mm")).toBe(value + 0);
});

describe("the exact arithmetic of these laws", () => {
  test("knows its doubles", () => {
    expect(exactOfDouble(0.5)).toEqual([1n << 52n, 1n << 53n]);
    expect(exactOfDouble(-3)).toEqual([-(3n << 51n), 1n << 51n]);
    expect(exactOfDouble(5e-324)).toEqual([1n, 1n << 1074n]);
  });

  test("tells the nearest double from its neighbours", () => {
    expect(isNearestDouble(0.1, [1n, 10n])).toBe(true);
    expect(isNearestDouble(0.1 + 2 ** -56, [1n, 10n])).toBe(false);
    expect(isNearestDouble(0.1 - 2 ** -56, [1n, 10n])).toBe(false);
    // 2 ** 53 + 1 lies halfway between two doubles, of which the smaller one is even.
    expect(isNearestDouble(2 ** 53, [2n ** 53n + 1n, 1n])).toBe(true);
    expect(isNearestDouble(2 ** 53 + 2, [2n ** 53n + 1n, 1n])).toBe(false);
  });

  test("covers every unit", () => {
    expect(Object.keys(NANOMETRES)).toEqual([...lengthUnits]);
  });
});
