import { InvalidArgumentError } from "@tapewise/outcome";
import { momentsOf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("two readings, by hand", () => {
  expect(momentsOf([434, 430])).toEqual({ n: 2, mean: 432, squares: 8, min: 430, max: 434 });
});

test("one reading has no spread", () => {
  expect(momentsOf([5])).toEqual({ n: 1, mean: 5, squares: 0, min: 5, max: 5 });
});

test("nothing, what is not finite, and what overflows is refused", () => {
  expect(() => momentsOf([])).toThrow(InvalidArgumentError);
  expect(() => momentsOf([1, Number.NEGATIVE_INFINITY])).toThrow(
    new InvalidArgumentError("values[1]", Number.NEGATIVE_INFINITY, "a finite number"),
  );
  expect(() => momentsOf([1e200, -1e200])).toThrow("a double can hold");
});
