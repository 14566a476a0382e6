import { differenceOfHeights } from "@tapewise/measurement";
import { expect, test } from "vitest";

const upper = { mm: 1440, uncertaintyMm: 3, degreesOfFreedom: 10 };
const lower = { mm: 1015, uncertaintyMm: 4 };

test("independent errors add as squares", () => {
  const torso = differenceOfHeights(upper, lower);
  expect([torso.value, torso.uncertainty]).toEqual([425, 5]);
  // 5⁴ / (3⁴/10)
  expect(torso.degreesOfFreedom).toBeCloseTo(6250 / 81, 10);
});

test("of a scale error that both share only that of the difference is left", () => {
  const torso = differenceOfHeights(upper, lower, { scaleHalfWidth: 0.01 });
  // 25 + (0.01 · 425)²/3 = 25 + 6.020833…; apart, the two would bring (0.01)² (1440² + 1015²)/3 = 103.5.
  expect(torso.uncertainty).toBeCloseTo(Math.sqrt(25 + 4.25 ** 2 / 3), 12);
  expect(torso.lines.map(({ name }) => name)).toEqual(["upper", "lower", "scale"]);
});

test("refuses heights the wrong way round, and errors that are none", () => {
  expect(() => differenceOfHeights(lower, upper)).toThrow("upper.mm must be a height above 1440 mm");
  expect(() => differenceOfHeights({ mm: Number.NaN, uncertaintyMm: 1 }, lower)).toThrow("upper.mm must be");
  expect(() => differenceOfHeights(upper, lower, { scaleHalfWidth: -1 })).toThrow("scaleHalfWidth must be");
  expect(() => differenceOfHeights(upper, { mm: 1, uncertaintyMm: -1 })).toThrow("uncertainty must be");
});
