import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareQuantile } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("two degrees of freedom have a closed form, from tail to tail", () => {
  for (const p of [1e-300, 1e-12, 0.01, 0.3, 0.5, 0.7, 0.999]) {
    expect(chiSquareQuantile(p, 2) / (-2 * Math.log1p(-p))).toBeCloseTo(1, 12);
  }
});

test("the ends, and what is too small for a double", () => {
  expect(chiSquareQuantile(0, 3)).toBe(0);
  expect(chiSquareQuantile(1, 3)).toBe(Number.POSITIVE_INFINITY);
  // About (p Γ(1 + a))^(1/a) with a = 0.005: ten to the power of −2000.
  expect(chiSquareQuantile(1e-10, 0.01)).toBe(0);
});

test("what it is not made for is refused", () => {
  expect(() => chiSquareQuantile(-0.1, 3)).toThrow(
    new InvalidArgumentError("p", -0.1, "a probability from 0 to 1"),
  );
  expect(() => chiSquareQuantile(0.1, 0)).toThrow(InvalidArgumentError);
});
