import { InvalidArgumentError } from "@tapewise/outcome";
import { fQuantile, studentTQuantile } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed forms for 2 degrees of freedom above the line", () => {
  for (const p of [1e-100, 0.01, 0.4, 0.5, 0.8, 0.999]) {
    expect(fQuantile(p, 2, 2) / (p / (1 - p))).toBeCloseTo(1, 11);
    expect(fQuantile(p, 2, 10) / (5 * Math.expm1(-Math.log1p(-p) / 5))).toBeCloseTo(1, 11);
  }
});

test("one degree of freedom above the line is the square of Student's t", () => {
  expect(fQuantile(0.95, 1, 7)).toBeCloseTo(studentTQuantile(0.975, 7) ** 2, 11);
});

test("the ends, and what a double cannot hold", () => {
  expect(fQuantile(0, 3, 4)).toBe(0);
  expect(fQuantile(1, 3, 4)).toBe(Number.POSITIVE_INFINITY);
  expect(fQuantile(1e-10, 0.01, 0.01)).toBe(0);
  expect(fQuantile(1 - 1e-10, 0.01, 0.01)).toBe(Number.POSITIVE_INFINITY);
});

test("what it is not made for is refused", () => {
  expect(() => fQuantile(2, 3, 4)).toThrow(InvalidArgumentError);
  expect(() => fQuantile(0.5, 3, -4)).toThrow(InvalidArgumentError);
});
