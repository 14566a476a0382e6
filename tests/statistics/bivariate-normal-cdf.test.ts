import { InvalidArgumentError } from "@tapewise/outcome";
import { bivariateNormalCdf, normalCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

const inf = Number.POSITIVE_INFINITY;

test("at the origin a third, a quarter and a sixth for ρ = ½, 0, −½", () => {
  expect(bivariateNormalCdf(0, 0, 0.5)).toBeCloseTo(1 / 3, 15);
  expect(bivariateNormalCdf(0, 0, 0)).toBe(0.25);
  expect(bivariateNormalCdf(0, 0, -0.5)).toBeCloseTo(1 / 6, 15);
});

test("full correlation: the smaller bound decides, or the two leave a gap", () => {
  expect(bivariateNormalCdf(1, 0.3, 1)).toBeCloseTo(normalCdf(0.3), 15);
  expect(bivariateNormalCdf(1, 0.3, -1)).toBeCloseTo(normalCdf(1) - normalCdf(-0.3), 15);
  expect(bivariateNormalCdf(-1, 0.3, -1)).toBe(0);
});

test("infinite bounds", () => {
  expect(bivariateNormalCdf(inf, inf, 0.7)).toBe(1);
  expect(bivariateNormalCdf(-inf, inf, 0.7)).toBe(0);
  expect(bivariateNormalCdf(inf, -1, -0.95)).toBeCloseTo(normalCdf(-1), 15);
});

test("NaN and impossible correlations are refused", () => {
  expect(() => bivariateNormalCdf(Number.NaN, 0, 0)).toThrow(
    new InvalidArgumentError("h", Number.NaN, "a number"),
  );
  expect(() => bivariateNormalCdf(0, Number.NaN, 0)).toThrow(
    new InvalidArgumentError("k", Number.NaN, "a number"),
  );
  expect(() => bivariateNormalCdf(0, 0, 1.5)).toThrow(
    new InvalidArgumentError("rho", 1.5, "a correlation from -1 to 1"),
  );
});
