import { expect, test } from "vitest";
import { solveInLogs } from "../../packages/statistics/src/solve-in-logs.ts";

/** The exponential distribution: 1 − e⁻ˣ below and e⁻ˣ above x. */
const below = {
  rising: true,
  probability: (x: number) => -Math.expm1(-x),
  slope: (x: number) => x * Math.exp(-x),
};
const above = {
  rising: false,
  probability: (x: number) => Math.exp(-x),
  slope: (x: number) => x * Math.exp(-x),
};

test.each([-700, -3, 0, 2, 6, 30, 700])("the root does not depend on the start, e to the %d", (start) => {
  for (const p of [1e-300, 1e-5, 0.5, 0.9]) {
    expect(solveInLogs(below, p, start) / -Math.log1p(-p)).toBeCloseTo(1, 13);
    expect(solveInLogs(above, p, start) / -Math.log(p)).toBeCloseTo(1, 13);
  }
});

test("roots beyond the doubles are 0 or infinite", () => {
  // The share 1 − x^(−1/1000) reaches 0.9 at 10 to the power of 1000, x^(1/1000) reaches 0.1 at its reciprocal.
  const slow = {
    rising: true,
    probability: (x: number) => (x > 1 ? 1 - x ** -0.001 : 0),
    slope: (x: number) => (x > 1 ? 0.001 * x ** -0.001 : 0),
  };
  expect(solveInLogs(slow, 0.9, 0)).toBe(Number.POSITIVE_INFINITY);
  const early = {
    rising: true,
    probability: (x: number) => Math.min(x ** 0.001, 1),
    slope: (x: number) => (x < 1 ? 0.001 * x ** 0.001 : 0),
  };
  expect(solveInLogs(early, 0.1, 0)).toBe(0);
});
