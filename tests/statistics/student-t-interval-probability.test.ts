import { InvalidArgumentError } from "@tapewise/outcome";
import { normalIntervalProbability, studentTIntervalProbability, studentTPdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

const inf = Number.POSITIVE_INFINITY;

test("half of the Cauchy distribution lies between −1 and 1", () => {
  expect(studentTIntervalProbability(-1, 1, 1)).toBeCloseTo(0.5, 15);
});

test("everything, half of it, and nothing", () => {
  expect(studentTIntervalProbability(-inf, inf, 2.5)).toBe(1);
  expect(studentTIntervalProbability(0, inf, 2.5)).toBe(0.5);
  expect(studentTIntervalProbability(2, 2, 2.5)).toBe(0);
  expect(studentTIntervalProbability(inf, inf, 2.5)).toBe(0);
});

test("two degrees of freedom, far out: 1/(2a²) − 1/(2b²) less what is of order a⁻⁴", () => {
  expect(studentTIntervalProbability(1e8, 2e8, 2) / (0.375 * 1e-16)).toBeCloseTo(1, 13);
});

test("an interval one step of doubles wide holds its width times the density", () => {
  for (const a of [-3, 0.5, 12]) {
    const b = a + 2 ** -48;
    expect(studentTIntervalProbability(a, b, 4) / (studentTPdf(a, 4) * 2 ** -48)).toBeCloseTo(1, 12);
  }
});

test("infinitely many degrees are the normal distribution", () => {
  expect(studentTIntervalProbability(-1, 2, inf)).toBe(normalIntervalProbability(-1, 2));
  expect(studentTIntervalProbability(8, 9, inf)).toBe(normalIntervalProbability(8, 9));
});

test("bounds out of order and too few degrees are refused", () => {
  expect(() => studentTIntervalProbability(1, 0, 3)).toThrow(
    new InvalidArgumentError("b", 0, "at least a (1)"),
  );
  expect(() => studentTIntervalProbability(0, 1, 0)).toThrow(InvalidArgumentError);
});
