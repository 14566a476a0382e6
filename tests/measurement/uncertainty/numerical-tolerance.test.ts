import { numericalTolerance } from "@tapewise/measurement";
import { expect, test } from "vitest";

test.each([
  // JCGM 101:2008, 7.9.2, examples: 0.000 35 g is 35 × 10⁻⁵, 2 K is 2 × 10⁰.
  [0.00035, 2, 5e-6],
  [2, 1, 0.5],
  [2, 2, 0.05],
  [99.4, 2, 0.5],
  // Rounds to 10 × 10¹, that is 1.0 × 10².
  [99.6, 2, 5],
  [1e-300, 1, 5e-301],
  [123456, 3, 500],
])("%f to %i digits: %f", (uncertainty, digits, tolerance) => {
  expect(numericalTolerance(uncertainty, digits)).toBe(tolerance);
});

test.each([
  [0, 1, "uncertainty"],
  [Number.NaN, 1, "uncertainty"],
  [1, 0, "digits"],
  [1, 1.5, "digits"],
])("refuses %f, %f", (uncertainty, digits, argument) => {
  expect(() => numericalTolerance(uncertainty, digits)).toThrow(`${argument} must be`);
});
