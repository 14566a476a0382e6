import { InvalidArgumentError } from "@tapewise/outcome";
import { normalCdf, studentTCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed forms for 1, 2 and 4 degrees of freedom", () => {
  for (const t of [-9, -1.2, -0.01, 0, 0.4, 1, 3, 50]) {
    const s = t / Math.sqrt(4 + t * t);
    expect(studentTCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 14);
    expect(studentTCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 14);
    expect(studentTCdf(t, 4)).toBeCloseTo(0.5 + (s * (3 - s * s)) / 4, 14);
  }
});

test("the lower tail keeps its digits", () => {
  // One degree: the tail is atan(1/t)/π = (1/t − 1/3t³ + …)/π.
  expect(studentTCdf(-1e10, 1) * Math.PI * 1e10).toBeCloseTo(1, 14);
  // Two degrees: ½ − t/(2√(2 + t²)) = 1/(2t²) − ….
  expect(studentTCdf(-1e8, 2) * 2e16).toBeCloseTo(1, 14);
});

test("the ways of adding up change without a step", () => {
  for (const df of [99.999999, 100]) {
    expect(studentTCdf(-1.7, 100) / studentTCdf(-1.7, df)).toBeCloseTo(1, 7);
  }
  // ln(1 + t²/df) = 0.4 at t = √(150 (e^0.4 − 1)) = 8.587.
  const seam = Math.sqrt(150 * Math.expm1(0.4));
  expect(studentTCdf(-seam * (1 - 1e-12), 150) / studentTCdf(-seam * (1 + 1e-12), 150)).toBeCloseTo(1, 9);
});

test("infinitely many degrees are the normal distribution", () => {
  expect(studentTCdf(1.3, Number.POSITIVE_INFINITY)).toBe(normalCdf(1.3));
  expect(studentTCdf(-1.3, Number.POSITIVE_INFINITY)).toBe(normalCdf(-1.3));
});

test("the ends", () => {
  expect(studentTCdf(Number.NEGATIVE_INFINITY, 3)).toBe(0);
  expect(studentTCdf(Number.POSITIVE_INFINITY, 3)).toBe(1);
  expect(studentTCdf(-1e308, 0.5)).toBeGreaterThan(0);
});

test("NaN and too few degrees of freedom are refused", () => {
  expect(() => studentTCdf(Number.NaN, 3)).toThrow(InvalidArgumentError);
  expect(() => studentTCdf(1, -2)).toThrow(new InvalidArgumentError("df", -2, "a number from 1e-10 up"));
  expect(() => studentTCdf(1, Number.NaN)).toThrow(InvalidArgumentError);
});
