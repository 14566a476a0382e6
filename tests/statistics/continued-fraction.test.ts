import { expect, test } from "vitest";
import { continuedFraction } from "../../packages/statistics/src/continued-fraction.ts";

test("1/(1 + 1/(1 + …)) is the golden ratio less one", () => {
  const golden = continuedFraction(
    () => 1,
    () => 1,
  );
  expect(golden).toBeCloseTo((Math.sqrt(5) - 1) / 2, 15);
});

test("x/(1 + x²/(3 + 4x²/(5 + …))) is the arc tangent (DLMF 4.25.3)", () => {
  for (const x of [0.01, 0.5, 1, 3]) {
    const value = continuedFraction(
      (n) => (n === 1 ? x : ((n - 1) * x) ** 2),
      (n) => 2 * n - 1,
    );
    expect(value).toBeCloseTo(Math.atan(x), 14);
  }
});

test("a fraction that ends is exact", () => {
  // 2/(4 + 0/(…)) = 1/2.
  expect(
    continuedFraction(
      (n) => (n === 1 ? 2 : 0),
      () => 4,
    ),
  ).toBe(0.5);
});
