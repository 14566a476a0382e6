import { InvalidArgumentError } from "@tapewise/outcome";
import { type LengthUnit, millimetres, type RoundingRule, roundingRules, roundLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";

describe("the rules at ties and beside them", () => {
  // Columns: half-even, half-away-from-zero, half-up, up, down.
  test.each([
    [2.5, 2, 3, 3, 3, 2],
    [3.5, 4, 4, 4, 4, 3],
    [2.4, 2, 2, 2, 3, 2],
    [2.6, 3, 3, 3, 3, 2],
    [-2.5, -2, -3, -2, -2, -3],
    [-3.5, -4, -4, -3, -3, -4],
    [-2.4, -2, -2, -2, -2, -3],
    [0.5, 0, 1, 1, 1, 0],
    [-0.5, 0, -1, 0, 0, -1],
    [7, 7, 7, 7, 7, 7],
    [0, 0, 0, 0, 0, 0],
  ])("%d mm to whole millimetres", (mm, ...expected) => {
    const rounded = roundingRules.map((rule) => roundLength(millimetres(mm), { to: "mm", step: 1 }, rule));
    expect(rounded).toEqual(expected);
  });
});

test.each([
  // 466 mm = 18.346… in = 146.77… eighths → 147/8 in = 18 3/8 in = 466.725 mm
  [466, "in", 1 / 8, 466.725],
  // 25.4 mm / 16 = 1.5875 mm: half of an eighth, so it ties between 0 and 1/8 and goes to the even 0
  [1.5875, "in", 1 / 8, 0],
  [1.5875, "in", 1 / 16, 1.5875],
  // 2.675 is a tie in decimals, though its double lies below
  [2.675, "mm", 0.01, 2.68],
  [434.9, "cm", 0.5, 435],
  [435, "cm", 1, 440],
  [445, "cm", 1, 440],
  [1016, "in", 1, 1016],
  [300, "ft", 1, 304.8],
] as const)("%d mm to %s in steps of %d, half to even", (mm, to, step, rounded) => {
  expect(roundLength(millimetres(mm), { to, step }, "half-even")).toBe(rounded);
});

test("there is no zero below zero", () => {
  expect(roundLength(millimetres(-0.2), { to: "mm", step: 1 }, "half-even")).toBe(0);
});

describe("a programmer's mistakes", () => {
  const length = millimetres(432);

  test.each([0, -1, Number.NaN, Infinity])("a step of %d", (step) => {
    expect(() => roundLength(length, { to: "mm", step }, "up")).toThrow(InvalidArgumentError);
  });

  test.each(["half", "", "toString"])("the rule %j", (rule) => {
    expect(() => roundLength(length, { to: "cm", step: 5 }, rule as RoundingRule)).toThrow(
      InvalidArgumentError,
    );
    // Also where every rule would give the same.
    expect(() => roundLength(length, { to: "mm", step: 1 }, rule as RoundingRule)).toThrow(
      InvalidArgumentError,
    );
  });

  test("a unit that is none, and a length that is none", () => {
    expect(() => roundLength(length, { to: "yd" as LengthUnit, step: 1 }, "up")).toThrow(
      InvalidArgumentError,
    );
    expect(() => roundLength(Number.NaN as typeof length, { to: "mm", step: 1 }, "up")).toThrow(
      InvalidArgumentError,
    );
  });

  test("a length that rounds beyond the largest double", () => {
    const grid = { to: "m", step: 1e307 } as const;
    expect(() => roundLength(millimetres(1.7e308), grid, "up")).toThrow(InvalidArgumentError);
  });
});
