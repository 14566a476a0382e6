import { InvalidArgumentError } from "@tapewise/outcome";
import { normalPdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("the height at the mean is 1/√(2π), and falls by √e at one deviation", () => {
  expect(normalPdf(0)).toBeCloseTo(1 / Math.sqrt(2 * Math.PI), 15);
  expect(normalPdf(0) / normalPdf(1)).toBeCloseTo(Math.sqrt(Math.E), 14);
});

test("there is nothing at infinity, nor where a double cannot hold it", () => {
  expect(normalPdf(Number.POSITIVE_INFINITY)).toBe(0);
  expect(normalPdf(Number.NEGATIVE_INFINITY)).toBe(0);
  expect(normalPdf(1e300)).toBe(0);
});

test("NaN is refused", () => {
  expect(() => normalPdf(Number.NaN)).toThrow(new InvalidArgumentError("z", Number.NaN, "a number"));
});
