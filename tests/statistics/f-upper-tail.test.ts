import { InvalidArgumentError } from "@tapewise/outcome";
import { fUpperTail } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed form for 2 degrees of freedom above the line, far out too", () => {
  for (const x of [0, 0.4, 8, 1e6]) {
    expect(fUpperTail(x, 2, 10) / (1 + x / 5) ** -5).toBeCloseTo(1, 12);
  }
});

test("the ends", () => {
  expect(fUpperTail(0, 3, 4)).toBe(1);
  expect(fUpperTail(Number.POSITIVE_INFINITY, 3, 4)).toBe(0);
});

test("what it is not made for is refused", () => {
  expect(() => fUpperTail(-1, 3, 4)).toThrow(InvalidArgumentError);
  expect(() => fUpperTail(1, 3, 0)).toThrow(InvalidArgumentError);
});
