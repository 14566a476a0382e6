import { InvalidArgumentError } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { expect, test } from "vitest";

test.each([432, 0.396875, 0, -3])("%d is kept as it is", (value) => {
  expect(millimetres(value)).toBe(value);
});

test.each([Number.NaN, Infinity, -Infinity])("%d is no length", (value) => {
  expect(() => millimetres(value)).toThrow(InvalidArgumentError);
});
