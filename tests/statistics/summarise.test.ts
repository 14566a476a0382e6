import { InvalidArgumentError } from "@tapewise/outcome";
import { summarise } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("three readings, by hand", () => {
  // Deviations −4, 0 and 4: squares 32, over n − 1 = 2 gives 16.
  expect(summarise([434, 430, 438])).toEqual({ n: 3, mean: 434, sd: 4, min: 430, max: 438 });
});

test("one reading has no deviation, equal ones have none to see", () => {
  expect(summarise([432])).toEqual({ n: 1, mean: 432, sd: undefined, min: 432, max: 432 });
  expect(summarise([432, 432]).sd).toBe(0);
});

test("a large common part costs nothing", () => {
  expect(summarise([1e15 + 1, 1e15 + 2, 1e15 + 3])).toMatchObject({ mean: 1e15 + 2, sd: 1 });
});

test("the sample is left as it was", () => {
  const sample = Object.freeze([3, 1, 2]);
  summarise(sample);
  expect(sample).toEqual([3, 1, 2]);
});

test("nothing, and what is not finite, is refused by its place", () => {
  expect(() => summarise([])).toThrow(new InvalidArgumentError("values", [], "at least one number"));
  expect(() => summarise([1, Number.NaN])).toThrow(
    new InvalidArgumentError("values[1]", Number.NaN, "a finite number"),
  );
  expect(() => summarise([Number.POSITIVE_INFINITY])).toThrow(InvalidArgumentError);
});

test.each([[[1.7e308, 1.7e308]], [[1e200, -1e200]]])("%j would overflow and is refused", (values) => {
  expect(() => summarise(values)).toThrow("numbers whose sum and squares a double can hold");
});
