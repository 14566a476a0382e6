import { InvalidArgumentError } from "@tapewise/outcome";
import { normalIntervalProbability, normalPdf, normalUpperTail } from "@tapewise/statistics";
import { expect, test } from "vitest";

const inf = Number.POSITIVE_INFINITY;

test("everything, half of it, and nothing", () => {
  expect(normalIntervalProbability(-inf, inf)).toBe(1);
  expect(normalIntervalProbability(0, inf)).toBe(0.5);
  expect(normalIntervalProbability(-inf, 0)).toBe(0.5);
  expect(normalIntervalProbability(3, 3)).toBe(0);
  expect(normalIntervalProbability(-inf, -inf)).toBe(0);
  expect(normalIntervalProbability(inf, inf)).toBe(0);
});

test("far out in the upper tail a difference of distribution functions would be zero", () => {
  expect(normalIntervalProbability(20, 21)).toBeCloseTo(normalUpperTail(20) - normalUpperTail(21), 100);
  expect(normalIntervalProbability(20, 21)).toBeGreaterThan(0);
});

test("an interval one step of doubles wide holds its width times the density", () => {
  for (const a of [-3, 0.5, 12]) {
    const b = a + 2 ** -48;
    expect(normalIntervalProbability(a, b) / (normalPdf(a) * 2 ** -48)).toBeCloseTo(1, 12);
  }
});

test("the way of adding up changes without a step", () => {
  // From 1 the narrow way ends where w (1 + w/2) = 1, at w = √3 − 1.
  const w = Math.sqrt(3) - 1;
  const narrow = normalIntervalProbability(1, 1 + w * (1 - 1e-14));
  const wide = normalIntervalProbability(1, 1 + w * (1 + 1e-14));
  expect(wide / narrow).toBeCloseTo(1, 13);
});

test("bounds must be numbers in order", () => {
  expect(() => normalIntervalProbability(2, 1)).toThrow(new InvalidArgumentError("b", 1, "at least a (2)"));
  expect(() => normalIntervalProbability(Number.NaN, 1)).toThrow(
    new InvalidArgumentError("a", Number.NaN, "a number"),
  );
  expect(() => normalIntervalProbability(0, Number.NaN)).toThrow(
    new InvalidArgumentError("b", Number.NaN, "a number"),
  );
});
