import { InvalidArgumentError } from "@tapewise/outcome";
import { normalQuantile, studentTQuantile } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed forms for 1 and 2 degrees of freedom", () => {
  for (const p of [1e-9, 0.01, 0.2, 0.26, 0.4999, 0.6, 0.77, 0.99]) {
    const cauchy = p < 0.5 ? -1 / Math.tan(Math.PI * p) : 1 / Math.tan(Math.PI * (1 - p));
    expect(studentTQuantile(p, 1) / cauchy).toBeCloseTo(1, 10);
    expect(studentTQuantile(p, 2) / ((2 * p - 1) / Math.sqrt(2 * p * (1 - p)))).toBeCloseTo(1, 10);
  }
});

test("the median and the ends", () => {
  expect(studentTQuantile(0.5, 3)).toBe(0);
  expect(studentTQuantile(0, 3)).toBe(Number.NEGATIVE_INFINITY);
  expect(studentTQuantile(1, 3)).toBe(Number.POSITIVE_INFINITY);
  expect(studentTQuantile(0.9, Number.POSITIVE_INFINITY)).toBe(normalQuantile(0.9));
});

test("with few degrees of freedom a quantile can be too large for a double", () => {
  expect(studentTQuantile(1e-200, 0.5)).toBe(Number.NEGATIVE_INFINITY);
  expect(studentTQuantile(0.9, 1e-10)).toBe(Number.POSITIVE_INFINITY);
});

test("what is no share, or no number of degrees, is refused", () => {
  expect(() => studentTQuantile(1.5, 3)).toThrow(
    new InvalidArgumentError("p", 1.5, "a probability from 0 to 1"),
  );
  expect(() => studentTQuantile(0.5, 0)).toThrow(new InvalidArgumentError("df", 0, "a number from 1e-10 up"));
});
