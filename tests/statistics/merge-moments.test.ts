import { InvalidArgumentError } from "@tapewise/outcome";
import { mergeMoments, momentsOf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("two and one readings, by hand", () => {
  // 430, 434 and 438 have mean 434 and squares 16 + 0 + 16.
  expect(mergeMoments(momentsOf([430, 434]), momentsOf([438]))).toEqual({
    n: 3,
    mean: 434,
    squares: 32,
    min: 430,
    max: 438,
  });
});

test("a large part and a small one", () => {
  const many = { n: 1e9, mean: 430, squares: 4e9, min: 420, max: 440 };
  const merged = mergeMoments(many, momentsOf([430]));
  expect(merged).toEqual({ ...many, n: 1e9 + 1 });
});

test("moments that count nothing are refused, and so is overflow", () => {
  const none = { n: 0, mean: 0, squares: 0, min: 0, max: 0 };
  expect(() => mergeMoments(none, momentsOf([1]))).toThrow(
    new InvalidArgumentError("a.n", 0, "a whole number above zero"),
  );
  expect(() => mergeMoments(momentsOf([1]), { ...none, n: Number.NaN })).toThrow(InvalidArgumentError);
  expect(() => mergeMoments(momentsOf([1e200]), momentsOf([-1e200]))).toThrow("a double can hold");
});
