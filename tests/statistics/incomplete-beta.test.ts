import { InvalidArgumentError } from "@tapewise/outcome";
import { incompleteBeta } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed forms", () => {
  for (const x of [0, 0.01, 0.3, 0.5, 0.77, 1]) {
    expect(incompleteBeta(x, 1, 1)).toBeCloseTo(x, 15);
    expect(incompleteBeta(x, 3.5, 1)).toBeCloseTo(x ** 3.5, 14);
    expect(incompleteBeta(x, 1, 7)).toBeCloseTo(1 - (1 - x) ** 7, 14);
    expect(incompleteBeta(x, 2, 3)).toBeCloseTo(6 * x ** 2 - 8 * x ** 3 + 3 * x ** 4, 14);
    expect(incompleteBeta(x, 0.5, 0.5)).toBeCloseTo((2 / Math.PI) * Math.asin(Math.sqrt(x)), 14);
  }
});

test("it is the chance of at least a successes in a + b − 1 throws", () => {
  // At least 2 heads in 4 throws of a fair coin: 11/16.
  expect(incompleteBeta(0.5, 2, 3)).toBeCloseTo(11 / 16, 15);
});

test("what it is not made for is refused", () => {
  expect(() => incompleteBeta(1.1, 1, 1)).toThrow(
    new InvalidArgumentError("x", 1.1, "a probability from 0 to 1"),
  );
  expect(() => incompleteBeta(0.1, 0, 1)).toThrow(InvalidArgumentError);
  expect(() => incompleteBeta(0.1, 1, Number.POSITIVE_INFINITY)).toThrow(InvalidArgumentError);
});
