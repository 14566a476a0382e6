import { InvalidArgumentError } from "@tapewise/outcome";
import { fCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("closed forms for 2 degrees of freedom above the line", () => {
  for (const x of [0, 1e-9, 0.4, 1, 8]) {
    expect(fCdf(x, 2, 2)).toBeCloseTo(x / (1 + x), 14);
    expect(fCdf(x, 2, 10)).toBeCloseTo(1 - (1 + x / 5) ** -5, 14);
  }
});

test("equal degrees of freedom have their median at 1", () => {
  for (const df of [0.3, 1, 12, 5000]) expect(fCdf(1, df, df)).toBeCloseTo(0.5, 12);
});

test("the ends", () => {
  expect(fCdf(0, 3, 4)).toBe(0);
  expect(fCdf(Number.POSITIVE_INFINITY, 3, 4)).toBe(1);
});

test("what it is not made for is refused", () => {
  expect(() => fCdf(-1, 3, 4)).toThrow(InvalidArgumentError);
  expect(() => fCdf(1, 0, 4)).toThrow(
    new InvalidArgumentError("df1", 0, "a number from 1e-10 to 10000000000"),
  );
  expect(() => fCdf(1, 4, Number.POSITIVE_INFINITY)).toThrow(InvalidArgumentError);
});
