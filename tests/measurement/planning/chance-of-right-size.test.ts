import { chanceOfRightSize } from "@tapewise/measurement";
import { normalIntervalProbability } from "@tapewise/statistics";
import { expect, test } from "vitest";

const open = Number.POSITIVE_INFINITY;

test("an exact measurement picks right wherever there is a size", () => {
  const gapped = [
    { from: 400, to: 430 },
    { from: 440, to: 470 },
  ];
  const chance = chanceOfRightSize(gapped, { meanMm: 435, sdMm: 10 }, 0);
  // −3.5 to −0.5 and 0.5 to 3.5 deviations
  expect(chance).toBeCloseTo(2 * normalIntervalProbability(0.5, 3.5), 14);
});

test("two open sizes that touch in the middle: ½ + arcsin(ρ)/π (Sheppard)", () => {
  // ρ = 3/5 for s = 3 and u = 4
  const sizes = [
    { from: -open, to: 435 },
    { from: 435, to: open },
  ];
  const chance = chanceOfRightSize(sizes, { meanMm: 435, sdMm: 3 }, 4);
  expect(chance).toBeCloseTo(0.5 + Math.asin(0.6) / Math.PI, 14);
});

test("one size is always picked, and right for whom it is made", () => {
  const chance = chanceOfRightSize([{ from: 420, to: 440 }], { meanMm: 430, sdMm: 10 }, 50);
  expect(chance).toBeCloseTo(normalIntervalProbability(-1, 1), 14);
});

test("an uncertainty beyond all lengths leaves the outermost sizes", () => {
  const sizes = [
    { from: 0, to: 430 },
    { from: 430, to: 440 },
    { from: 440, to: 900 },
  ];
  // The measured length is above or below with half a chance each: ½ (Φ(−½) + Φ(−½)).
  const chance = chanceOfRightSize(sizes, { meanMm: 435, sdMm: 10 }, 1e9);
  expect(chance).toBeCloseTo(normalIntervalProbability(0.5, open), 6);
});

test.each([
  [[], { meanMm: 435, sdMm: 10 }, 5, "sizes"],
  [[{ from: 1, to: 2 }], { meanMm: Number.NaN, sdMm: 10 }, 5, "belief.meanMm"],
  [[{ from: 1, to: 2 }], { meanMm: 435, sdMm: 0 }, 5, "belief.sdMm"],
  [[{ from: 1, to: 2 }], { meanMm: 435, sdMm: 1 }, -5, "uncertaintyMm"],
])("refuses %j for %o and %f", (sizes, belief, uncertainty, argument) => {
  expect(() => chanceOfRightSize(sizes, belief, uncertainty)).toThrow(`${argument} must be`);
});
