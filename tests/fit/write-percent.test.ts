import { writePercent } from "@tapewise/fit";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

test.each([
  [0, "less than 1 %"],
  [1e-9, "less than 1 %"],
  [0.0099, "less than 1 %"],
  [0.01, "1 %"],
  [0.5, "50 %"],
  [0.934, "93 %"],
  [0.99, "99 %"],
  [0.9901, "more than 99 %"],
  [1 - 1e-12, "more than 99 %"],
  [1, "more than 99 %"],
])("%d is %s", (probability, text) => {
  expect(writePercent(probability)).toBe(text);
});

test.each([Number.NaN, -0.1, 1.1, Number.POSITIVE_INFINITY])("%d is no probability", (wrong) => {
  expect(() => writePercent(wrong)).toThrow(InvalidArgumentError);
});
