import { InvalidArgumentError } from "@tapewise/outcome";
import { describeUnit, type LengthUnit, lengthUnits, parseLengthUnit } from "@tapewise/units";
import { expect, test } from "vitest";

test("each unit has its names, its system and its length in nanometres", () => {
  const rows = lengthUnits.map((unit) => Object.values(describeUnit(unit)));
  expect(rows).toEqual([
    ["mm", "millimetre", "millimetres", "metric", 1e6],
    ["cm", "centimetre", "centimetres", "metric", 1e7],
    ["m", "metre", "metres", "metric", 1e9],
    // 1 in = 25.4 mm, 1 ft = 12 in
    ["in", "inch", "inches", "inch-pound", 25_400_000],
    ["ft", "foot", "feet", "inch-pound", 12 * 25_400_000],
  ]);
});

test.each(lengthUnits)("the names of %s are read as %s", (unit) => {
  const { symbol, name, plural } = describeUnit(unit);
  expect([symbol, name, plural].map((text) => parseLengthUnit(text))).toEqual([unit, unit, unit]);
});

test.each(["yd", "", "constructor", "toString"])("%j is refused", (unit) => {
  expect(() => describeUnit(unit as LengthUnit)).toThrow(InvalidArgumentError);
});
