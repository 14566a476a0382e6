import { InvalidArgumentError } from "@tapewise/outcome";
import { fromMillimetres, type LengthUnit, millimetres, toMillimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

describe("to millimetres", () => {
  test.each([
    [1, "in", 25.4],
    [40, "in", 1016],
    [18.375, "in", 466.725],
    [69.1, "in", 1755.14],
    [1, "ft", 304.8],
    [5.75, "ft", 1752.6],
    [43.2, "cm", 432],
    [1.13, "cm", 11.3],
    [0.432, "m", 432],
    [1.75, "m", 1750],
    [432, "mm", 432],
    [-1.5, "in", -38.1],
  ] as const)("%d %s are %d mm", (value, unit, mm) => {
    expect(toMillimetres(value, unit)).toBe(mm);
  });

  test("plain products would miss two of these", () => {
    expect(1.13 * 10).not.toBe(11.3);
    expect(69.1 * 25.4).not.toBe(1755.14);
  });
});

describe("from millimetres", () => {
  test.each([
    [304.8, "in", 12],
    [25.4, "in", 1],
    [439.42, "in", 17.3],
    [9.525, "in", 0.375],
    [1752.6, "ft", 5.75],
    [432, "cm", 43.2],
    [432, "m", 0.432],
    [-38.1, "in", -1.5],
  ] as const)("%d mm in %s are %d", (mm, unit, value) => {
    expect(fromMillimetres(millimetres(mm), unit)).toBe(value);
  });

  test("a foot is twelve inches exactly", () => {
    // Doubles of metres are the usual way to 12.000000000000002.
    expect(0.3048 / 0.0254).not.toBe(12);
    expect(fromMillimetres(toMillimetres(1, "ft"), "in")).toBe(12);
  });
});

describe("numbers off the nanometre grid, very large and very small ones", () => {
  test.each([
    // Each is the decimal on the left times 25.4, read by the runtime's own correctly rounded parser.
    [1e300, "2.54e301"],
    [1.5e306, "3.81e307"],
    [1e-300, "2.54e-299"],
    [5e-324, "1.27e-322"],
    [0.1234567890123, "3.13580244091242"],
    [123456789012345, "3.135802440913563e15"],
  ])("%d in", (value, mm) => {
    expect(toMillimetres(value, "in")).toBe(Number(mm));
  });

  test("the smallest double of millimetres is nothing in metres, and never less", () => {
    expect(fromMillimetres(millimetres(5e-324), "m")).toBe(0);
  });

  test("no zero is negative", () => {
    expect(toMillimetres(-0, "in")).toBe(0);
    expect(fromMillimetres(millimetres(-0), "in")).toBe(0);
    expect(fromMillimetres(millimetres(-5e-324), "m")).toBe(0);
  });
});

describe("a programmer's mistakes", () => {
  test.each([Number.NaN, Infinity, -Infinity])("%d is no number of units", (value) => {
    expect(() => toMillimetres(value, "cm")).toThrow(InvalidArgumentError);
    expect(() => fromMillimetres(value as ReturnType<typeof millimetres>, "cm")).toThrow(
      InvalidArgumentError,
    );
  });

  test("a result beyond the largest double", () => {
    expect(() => toMillimetres(1e308, "ft")).toThrow(InvalidArgumentError);
  });

  test.each(["yd", "kg", "__proto__"])("%j is no unit", (unit) => {
    expect(() => toMillimetres(1, unit as LengthUnit)).toThrow(InvalidArgumentError);
    expect(() => fromMillimetres(millimetres(1), unit as LengthUnit)).toThrow(InvalidArgumentError);
  });
});
