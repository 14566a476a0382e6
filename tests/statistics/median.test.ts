import { InvalidArgumentError } from "@tapewise/outcome";
import { median } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("the middle value, or the mean of the two in the middle", () => {
  expect(median([438, 430, 434])).toBe(434);
  expect(median([438, 430, 434, 500])).toBe(436);
  expect(median([7])).toBe(7);
});

test("nothing has no median", () => {
  expect(() => median([])).toThrow(InvalidArgumentError);
  expect(() => median([Number.NaN])).toThrow(InvalidArgumentError);
});
