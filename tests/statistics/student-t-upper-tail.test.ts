import { InvalidArgumentError } from "@tapewise/outcome";
import { normalUpperTail, studentTUpperTail } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("one degree of freedom: a quarter lies beyond 1", () => {
  expect(studentTUpperTail(1, 1)).toBeCloseTo(0.25, 15);
  expect(studentTUpperTail(-1, 1)).toBeCloseTo(0.75, 15);
});

test("three degrees: ½ − (atan(u) + u/(1 + u²))/π with u = t/√3", () => {
  for (const t of [0, 0.2, 1.5, 8]) {
    const u = t / Math.sqrt(3);
    const tail = 0.5 - (Math.atan(u) + u / (1 + u * u)) / Math.PI;
    expect(studentTUpperTail(t, 3)).toBeCloseTo(tail, 14);
  }
});

test("the ends", () => {
  expect(studentTUpperTail(Number.POSITIVE_INFINITY, 3)).toBe(0);
  expect(studentTUpperTail(Number.NEGATIVE_INFINITY, 3)).toBe(1);
  expect(studentTUpperTail(2, Number.POSITIVE_INFINITY)).toBe(normalUpperTail(2));
});

test("NaN and too few degrees of freedom are refused", () => {
  expect(() => studentTUpperTail(Number.NaN, 3)).toThrow(InvalidArgumentError);
  expect(() => studentTUpperTail(1, 0)).toThrow(InvalidArgumentError);
});
