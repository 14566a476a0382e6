import { InvalidArgumentError } from "@tapewise/outcome";
import { logGamma } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("factorials, and √π at one half", () => {
  let factorial = 1;
  for (let n = 1; n <= 20; n += 1) {
    expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 13);
    factorial *= n;
  }
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 15);
});

test("exactly zero at 1 and 2, and of the right slope beside them", () => {
  expect(logGamma(1)).toBe(0);
  expect(logGamma(2)).toBe(0);
  // The slopes are −γ and 1 − γ, with Euler's constant 0.5772156649015329.
  expect(logGamma(1 + 2 ** -30) * 2 ** 30).toBeCloseTo(-0.5772156649015329, 8);
  expect(logGamma(2 + 2 ** -30) * 2 ** 30).toBeCloseTo(1 - 0.5772156649015329, 8);
});

test("the ends", () => {
  expect(logGamma(Number.MIN_VALUE)).toBeCloseTo(-Math.log(Number.MIN_VALUE), 10);
  expect(logGamma(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  expect(logGamma(1e308)).toBe(Number.POSITIVE_INFINITY);
});

test.each([0, -1, Number.NaN])("%d is refused", (x) => {
  expect(() => logGamma(x)).toThrow(new InvalidArgumentError("x", x, "a number above zero"));
});
