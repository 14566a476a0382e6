import { InvalidArgumentError } from "@tapewise/outcome";
import { normalUpperTail } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("the ends", () => {
  expect(normalUpperTail(0)).toBe(0.5);
  expect(normalUpperTail(Number.NEGATIVE_INFINITY)).toBe(1);
  expect(normalUpperTail(Number.POSITIVE_INFINITY)).toBe(0);
});

test("a small tail keeps its digits, where one minus the rest has none left", () => {
  // Between the bounds φ(z)(1/z − 1/z³) and φ(z)/z (Gordon 1941).
  const density = Math.exp(-50) / Math.sqrt(2 * Math.PI);
  expect(normalUpperTail(10)).toBeGreaterThan(density * (0.1 - 0.001));
  expect(normalUpperTail(10)).toBeLessThan(density * 0.1);
});

test("NaN is refused", () => {
  expect(() => normalUpperTail(Number.NaN)).toThrow(InvalidArgumentError);
});
