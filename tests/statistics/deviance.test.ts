import { expect, test } from "vitest";
import { deviance } from "../../packages/statistics/src/deviance.ts";

test("far apart it is its definition", () => {
  expect(deviance(1, Math.E)).toBeCloseTo(Math.E - 2, 15);
  expect(deviance(Math.E, 1)).toBeCloseTo(1, 15);
  expect(deviance(0, 3)).toBe(3);
});

test("close together it is half the squared difference over m, less a third of the cube", () => {
  // x ln(x/m) + m − x with x = m + d is d²/2m − d³/6m² + d⁴/12m³ − …
  const [m, d] = [1000, 2 ** -10];
  expect(deviance(m + d, m) / (d ** 2 / (2 * m) - d ** 3 / (6 * m ** 2))).toBeCloseTo(1, 12);
  expect(deviance(5, 5)).toBe(0);
});

test("it does not overflow where the quotient does", () => {
  expect(deviance(1e-10, 1e308)).toBe(1e308);
});
