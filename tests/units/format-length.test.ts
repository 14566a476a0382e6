import { InvalidArgumentError } from "@tapewise/outcome";
import { type FormatLengthOptions, formatLength, millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

const format = (mm: number, options: Partial<FormatLengthOptions>): string =>
  formatLength(millimetres(mm), { rounding: "half-even", ...options } as FormatLengthOptions);

describe("with decimals", () => {
  test.each([
    [432, "mm", 0, "432 mm"],
    [432, "cm", 1, "43.2 cm"],
    [432, "cm", 0, "43 cm"],
    [430, "cm", 1, "43.0 cm"],
    [432, "m", 3, "0.432 m"],
    [1750, "m", 2, "1.75 m"],
    [441.325, "in", 3, "17.375 in"],
    [1752.6, "ft", 2, "5.75 ft"],
    [0.04, "cm", 1, "0.0 cm"],
    [1234567.8, "mm", 1, "1234567.8 mm"],
  ] as const)("%d mm in %s with %d", (mm, unit, decimals, text) => {
    expect(format(mm, { unit, decimals })).toBe(text);
  });

  test.each([
    ["en-GB", "43.2 cm"],
    ["de-DE", "43,2 cm"],
    // Not 43٫2 with Arabic digits, which could not be read back.
    ["ar-EG", "43.2 cm"],
  ])("in %s", (locale, text) => {
    expect(format(432, { unit: "cm", decimals: 1, locale })).toBe(text);
  });

  test("ties are decided by the rule, on the decimals that people see", () => {
    // 12.35 cm; its double lies below the tie
    expect(format(123.5, { unit: "cm", decimals: 1, rounding: "half-even" })).toBe("12.4 cm");
    expect(format(122.5, { unit: "cm", decimals: 1, rounding: "half-even" })).toBe("12.2 cm");
    expect(format(122.5, { unit: "cm", decimals: 1, rounding: "half-away-from-zero" })).toBe("12.3 cm");
    expect(format(122.1, { unit: "cm", decimals: 1, rounding: "up" })).toBe("12.3 cm");
    expect(format(122.9, { unit: "cm", decimals: 1, rounding: "down" })).toBe("12.2 cm");
  });
});

describe("with inch fractions", () => {
  test.each([
    // 18.375 in
    [466.725, 8, "18 3/8 in"],
    [466.725, 64, "18 3/8 in"],
    // 466 mm = 18.346… in: 36.7 halves, 73.4 quarters, 1174.2 sixty-fourths = 18 22/64
    [466, 2, "18 1/2 in"],
    [466, 4, "18 1/4 in"],
    [466, 64, "18 11/32 in"],
    [457.2, 8, "18 in"],
    [9.525, 16, "3/8 in"],
    [0.1, 64, "0 in"],
    // 17 15/16 in and a bit: 456 mm = 17.953 in
    [456, 8, "18 in"],
  ] as const)("%d mm to 1/%d", (mm, denominator, text) => {
    expect(format(mm, { unit: "in", denominator })).toBe(text);
  });

  test.each([
    [466.725, 8, "18⅜ in"],
    [9.525, 8, "⅜ in"],
    [12.7, 2, "½ in"],
    [6.35, 4, "¼ in"],
    [19.05, 4, "¾ in"],
    [3.175, 8, "⅛ in"],
    [15.875, 8, "⅝ in"],
    [22.225, 8, "⅞ in"],
    // 1/16 in has no character
    [458.7875, 16, "18 1/16 in"],
  ] as const)("%d mm to 1/%d with characters", (mm, denominator, text) => {
    expect(format(mm, { unit: "in", denominator, fractionStyle: "character" })).toBe(text);
  });
});

describe("in feet and inches", () => {
  test.each([
    [466.725, { denominator: 8 }, "1 ft 6 3/8 in"],
    [466.725, { decimals: 1 }, "1 ft 6.4 in"],
    // 914 mm = 35.98… in: rounding carries into the feet
    [914, { decimals: 0 }, "3 ft 0 in"],
    [914, { denominator: 2 }, "3 ft 0 in"],
    [914.4, { denominator: 8 }, "3 ft 0 in"],
    // 304 mm = 11.97 in
    [304, { decimals: 0 }, "1 ft 0 in"],
    [304, { decimals: 2 }, "11.97 in"],
    [1752.6, { decimals: 0 }, "5 ft 9 in"],
    [152.4, { decimals: 0 }, "6 in"],
    [0, { decimals: 0 }, "0 in"],
    [317.5, { denominator: 2, fractionStyle: "character" }, "1 ft ½ in"],
  ] as const)("%d mm with %j", (mm, options, text) => {
    expect(format(mm, { unit: "ft-in", ...options } as Partial<FormatLengthOptions>)).toBe(text);
  });
});

describe("differences", () => {
  test.each([
    [-3, { unit: "mm", decimals: 0 }, "−3 mm"],
    [-466.725, { unit: "in", denominator: 8 }, "−18 3/8 in"],
    [-466.725, { unit: "ft-in", denominator: 8 }, "−1 ft 6 3/8 in"],
    [-0.2, { unit: "mm", decimals: 0 }, "0 mm"],
    [-0.2, { unit: "mm", decimals: 0, rounding: "down" }, "−1 mm"],
    [-0, { unit: "cm", decimals: 1 }, "0.0 cm"],
  ] as const)("%d mm with %j", (mm, options, text) => {
    expect(format(mm, options)).toBe(text);
  });
});

describe("a programmer's mistakes", () => {
  test.each([
    [{ unit: "mm", decimals: -1 }],
    [{ unit: "mm", decimals: 10 }],
    [{ unit: "mm", decimals: 0.5 }],
    [{ unit: "mm" }],
    [{ unit: "in", denominator: 3 }],
    [{ unit: "in", denominator: 128 }],
    [{ unit: "cm", denominator: 8 }],
    [{ unit: "yd", decimals: 0 }],
    [{ unit: "mm", decimals: 1, rounding: "nearest" }],
    [{ unit: "mm", decimals: 1, locale: "no tag" }],
  ])("%j", (options) => {
    expect(() => format(432.15, options as Partial<FormatLengthOptions>)).toThrow(InvalidArgumentError);
  });

  test("a length that is none", () => {
    const options = { unit: "mm", decimals: 0, rounding: "up" } as const;
    expect(() => formatLength(Number.NaN as ReturnType<typeof millimetres>, options)).toThrow(
      InvalidArgumentError,
    );
  });
});
