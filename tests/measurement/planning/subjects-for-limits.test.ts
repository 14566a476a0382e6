import { subjectsForLimits } from "@tapewise/measurement";
import { expect, test } from "vitest";

test("grows as the square of what is wanted", () => {
  // 3 · 1.95996² · (10/2)² = 288.1 and 3 · 1.95996² · 10² = 1152.4
  expect(subjectsForLimits({ differenceSdMm: 10, halfWidthMm: 2 })).toBe(289);
  expect(subjectsForLimits({ differenceSdMm: 10, halfWidthMm: 1 })).toBe(1153);
});

test("for another probability the limits are other ones", () => {
  // z = 1.64485, (1 + z²/2) z² (10/2)² = 2.35277 · 2.70554 · 25 = 159.14
  expect(subjectsForLimits({ differenceSdMm: 10, halfWidthMm: 2, probability: 0.9 })).toBe(160);
});

test("never fewer than two", () => {
  expect(subjectsForLimits({ differenceSdMm: 1, halfWidthMm: 100 })).toBe(2);
});

test.each([
  [{ differenceSdMm: 0 }, "differenceSdMm"],
  [{ halfWidthMm: 0 }, "halfWidthMm"],
  [{ halfWidthMm: 1e-9 }, "halfWidthMm"],
  [{ probability: 0 }, "probability"],
])("refuses %o", (change, argument) => {
  const plan = { differenceSdMm: 10, halfWidthMm: 2, ...change };
  expect(() => subjectsForLimits(plan)).toThrow(`${argument} must be`);
});
