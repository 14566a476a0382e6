import { InvalidArgumentError } from "@tapewise/outcome";
import { normalPdf, studentTPdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("one degree of freedom is the Cauchy distribution, two have a closed form", () => {
  for (const t of [-4, -0.5, 0, 1, 30]) {
    expect(studentTPdf(t, 1)).toBeCloseTo(1 / (Math.PI * (1 + t * t)), 15);
    expect(studentTPdf(t, 2)).toBeCloseTo((2 + t * t) ** -1.5, 15);
  }
});

test("infinitely many are the normal distribution", () => {
  expect(studentTPdf(1.3, Number.POSITIVE_INFINITY)).toBe(normalPdf(1.3));
  expect(studentTPdf(1.3, 1e300)).toBeCloseTo(normalPdf(1.3), 15);
});

test("the ends of the doubles", () => {
  expect(studentTPdf(Number.POSITIVE_INFINITY, 3)).toBe(0);
  expect(studentTPdf(1e300, 0.001)).toBeGreaterThan(0);
});

test("NaN and too few degrees of freedom are refused", () => {
  expect(() => studentTPdf(Number.NaN, 3)).toThrow(new InvalidArgumentError("t", Number.NaN, "a number"));
  expect(() => studentTPdf(1, 0)).toThrow(new InvalidArgumentError("df", 0, "a number from 1e-10 up"));
});
