import { varianceInterval } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { chiSquareCdf } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("of one mean square it is the chi-square interval", () => {
  const { value, lower, upper } = varianceInterval([{ weight: 2, meanSquare: 3, degreesOfFreedom: 8 }], 0.9);
  expect(value).toBe(6);
  // 8 · 6 / bound is the chi-square that 5 % of draws exceed, or fall below.
  expect(chiSquareCdf((8 * 6) / lower, 8)).toBeCloseTo(0.95, 12);
  expect(chiSquareCdf((8 * 6) / upper, 8)).toBeCloseTo(0.05, 12);
});

test("ends of several mean squares are as far away as the root of the sum of squares of their own", () => {
  const own = [
    { weight: 0.5, meanSquare: 4, degreesOfFreedom: 3 },
    { weight: 1.5, meanSquare: 2, degreesOfFreedom: 20 },
  ];
  const whole = varianceInterval(own, 0.95);
  const parts = own.map((part) => varianceInterval([part], 0.95));
  expect(whole.value).toBe(5);
  const down = Math.hypot(...parts.map(({ value, lower }) => value - lower));
  const up = Math.hypot(...parts.map(({ value, upper }) => upper - value));
  expect(whole.lower).toBeCloseTo(5 - down, 12);
  expect(whole.upper).toBeCloseTo(5 + up, 12);
});

test("mean squares of 0 have an interval without width", () => {
  expect(varianceInterval([{ weight: 1, meanSquare: 0, degreesOfFreedom: 4 }], 0.95)).toEqual({
    value: 0,
    lower: 0,
    upper: 0,
  });
});

test("refuses what is no sum of mean squares", () => {
  const part = { weight: 1, meanSquare: 1, degreesOfFreedom: 1 };
  for (const parts of [
    [],
    [{ ...part, weight: -1 }],
    [{ ...part, meanSquare: Number.NaN }],
    [{ ...part, degreesOfFreedom: 0 }],
  ]) {
    expect(() => varianceInterval(parts, 0.95)).toThrow(InvalidArgumentError);
  }
  expect(() => varianceInterval([part], 1)).toThrow(InvalidArgumentError);
});
