import { InvalidArgumentError } from "@tapewise/outcome";
import { normalCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("half lies below the mean, all below infinity", () => {
  expect(normalCdf(0)).toBe(0.5);
  expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1);
  expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
});

test("the rule of 68, 95 and 99.7 percent", () => {
  for (const [z, percent] of [
    [1, "68.27"],
    [2, "95.45"],
    [3, "99.73"],
  ] as const) {
    expect((100 * (normalCdf(z) - normalCdf(-z))).toFixed(2)).toBe(percent);
  }
});

test("far below the mean it follows the tail's asymptotic series, to the end of the doubles", () => {
  // Φ(−z) = φ(z)/z (1 − 1/z² + 3/z⁴ − 15/z⁶ + 105/z⁸ − …); at 35 the next term is below 2e-12.
  const z = 35;
  const w = 1 / (z * z);
  const logTail =
    -(z * z) / 2 - Math.log(z * Math.sqrt(2 * Math.PI)) + Math.log1p(-w + 3 * w ** 2 - 15 * w ** 3);
  expect(Math.log(normalCdf(-z))).toBeCloseTo(logTail, 10);
  expect(normalCdf(-38)).toBeGreaterThan(0);
  expect(normalCdf(-41)).toBe(0);
});

test("the pieces that it is made of meet without a step", () => {
  for (const seam of [0.67448975, 5.656854249492381]) {
    const below = normalCdf(-seam - 1e-12);
    const above = normalCdf(-seam + 1e-12);
    const density = Math.exp((-seam * seam) / 2) / Math.sqrt(2 * Math.PI);
    expect((above - below) / density).toBeCloseTo(2e-12, 14);
  }
});

test("NaN is refused", () => {
  expect(() => normalCdf(Number.NaN)).toThrow(InvalidArgumentError);
});
