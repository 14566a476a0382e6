import { fc, test } from "@fast-check/vitest";
import { type LengthUnit, millimetres, type RoundingRule, roundLength } from "@tapewise/units";
import { describe, expect } from "vitest";
import { ruleArbitrary, unitArbitrary } from "./units-arbitraries.ts";
import {
  absolute,
  compare,
  decimalText,
  type Exact,
  isNearestDouble,
  NANOMETRES,
  subtract,
} from "./units-exact.ts";

const MM = 1_000_000n;

/** A step that is a decimal or a binary fraction of its unit, with its exact value. */
const stepArbitrary: fc.Arbitrary<{ readonly step: number; readonly exact: Exact }> = fc.oneof(
  fc.constantFrom(2, 4, 8, 16, 32, 64).map((d) => ({ step: 1 / d, exact: [1n, BigInt(d)] as const })),
  fc
    .tuple(fc.constantFrom(1n, 2n, 5n, 10n, 25n), fc.integer({ min: 0, max: 3 }))
    .map(([units, decimals]) => ({
      step: Number(decimalText(units, decimals)),
      exact: [units, 10n ** BigInt(decimals)] as const,
    })),
);

/** Millimetres with up to six decimals, and how many nanometres they are. */
const lengthArbitrary = fc
  .bigInt(-3_000_000_000n, 3_000_000_000n)
  .map((nanometres) => ({ nanometres, mm: millimetres(Number(decimalText(nanometres, 6))) }));

/** How many steps a length is, exactly. */
function stepsIn(nanometres: bigint, unit: LengthUnit, [top, bottom]: Exact): Exact {
  return [nanometres * bottom, NANOMETRES[unit] * top];
}

/** The rules by their definitions, over the two whole numbers around an exact one. */
function roundByDefinition(value: Exact, rule: RoundingRule): bigint {
  let floor = value[0] / value[1];
  if (compare([floor, 1n], value) > 0) floor -= 1n;
  if (compare([floor, 1n], value) === 0) return floor;
  const ceiling = floor + 1n;
  const order = compare(absolute(subtract(value, [floor, 1n])), absolute(subtract([ceiling, 1n], value)));
  const even = floor % 2n === 0n ? floor : ceiling;
  const outer = floor < 0n ? floor : ceiling;
  const nearest = order < 0 ? floor : ceiling;
  switch (rule) {
    case "up":
      return ceiling;
    case "down":
      return floor;
    case "half-up":
      return order === 0 ? ceiling : nearest;
    case "half-even":
      return order === 0 ? even : nearest;
    case "half-away-from-zero":
      return order === 0 ? outer : nearest;
  }
}

const any = [lengthArbitrary, unitArbitrary, stepArbitrary, ruleArbitrary] as const;

test.prop([...any])(
  "law: rounding gives the step that the rule's definition gives",
  ({ nanometres, mm }, unit, grid, rule) => {
    const steps = roundByDefinition(stepsIn(nanometres, unit, grid.exact), rule);
    const rounded = roundLength(mm, { to: unit, step: grid.step }, rule);
    expect(isNearestDouble(rounded, [steps * grid.exact[0] * NANOMETRES[unit], grid.exact[1] * MM])).toBe(
      true,
    );
  },
);

test.prop([...any])("law: rounding twice is rounding once", ({ mm }, unit, { step }, rule) => {
  // Lengths on a grid of sixty-fourths or of up to six decimals of a millimetre are printed in full.
  const once = roundLength(mm, { to: unit, step }, rule);
  expect(roundLength(once, { to: unit, step }, rule)).toBe(once);
});

test.prop([...any])(
  "law: rounding moves a length by less than a step, to the nearest by half at most",
  ({ nanometres, mm }, unit, grid, rule) => {
    const rounded = roundLength(mm, { to: unit, step: grid.step }, rule);
    const stepMm = (grid.step * Number(NANOMETRES[unit])) / 1e6;
    const moved = rounded - Number(nanometres) / 1e6;
    // A hair of slack for the doubles of this check: sizes are below 1e7 mm.
    const slack = 1e-8;
    expect(Math.abs(moved)).toBeLessThanOrEqual(stepMm * (rule.startsWith("half") ? 0.5 : 1) + slack);
    if (rule === "up") expect(moved).toBeGreaterThanOrEqual(-slack);
    if (rule === "down") expect(moved).toBeLessThanOrEqual(slack);
  },
);

test.prop([...any, lengthArbitrary])(
  "law: rounding keeps the order of lengths",
  ({ mm }, unit, { step }, rule, other) => {
    const [less, more] = mm <= other.mm ? [mm, other.mm] : [other.mm, mm];
    const grid = { to: unit, step };
    expect(roundLength(less, grid, rule)).toBeLessThanOrEqual(roundLength(more, grid, rule));
  },
);

describe("law: the rules mirror each other below zero", () => {
  const opposite: Readonly<Record<string, RoundingRule>> = {
    "half-even": "half-even",
    "half-away-from-zero": "half-away-from-zero",
    up: "down",
    down: "up",
  };
  test.prop([
    lengthArbitrary,
    unitArbitrary,
    stepArbitrary,
    fc.constantFrom("half-even", "half-away-from-zero", "up", "down"),
  ])("as up mirrors down", ({ mm }, to, { step }, rule) => {
    const mirrored = roundLength(millimetres(-mm), { to, step }, opposite[rule] ?? "up");
    expect(-mirrored + 0).toBe(roundLength(mm, { to, step }, rule as RoundingRule) + 0);
  });
});

test.prop([fc.bigInt(-1000n, 1000n), fc.integer({ min: 0, max: 3 }), ruleArbitrary])(
  "law: ties are where people see them, whatever the doubles",
  (odd, decimals, rule) => {
    // odd + 1/2 steps of a decimal grid, as 2.675 on a grid of 0.01
    const tie = decimalText(10n * odd + 5n, decimals + 1);
    const step = Number(decimalText(1n, decimals));
    const expected = roundByDefinition([2n * odd + 1n, 2n], rule);
    expect(roundLength(millimetres(Number(tie)), { to: "mm", step }, rule) + 0).toBe(
      Number(decimalText(expected, decimals)) + 0,
    );
  },
);
