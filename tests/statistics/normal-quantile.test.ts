import { InvalidArgumentError } from "@tapewise/outcome";
import { normalCdf, normalQuantile } from "@tapewise/statistics";
import { expect, test } from "vitest";

test("the median is the mean, and the ends are infinite", () => {
  expect(normalQuantile(0.5)).toBe(0);
  expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
  expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
});

test("every printed table has 1.6449, 1.9600 and 2.5758", () => {
  expect(normalQuantile(0.95).toFixed(4)).toBe("1.6449");
  expect(normalQuantile(0.975).toFixed(4)).toBe("1.9600");
  expect(normalQuantile(0.995).toFixed(4)).toBe("2.5758");
});

test("the smallest double is a share too", () => {
  const z = normalQuantile(Number.MIN_VALUE);
  expect(z).toBeGreaterThan(-39);
  expect(z).toBeLessThan(-38);
});

test("the pieces that it is made of meet without a step", () => {
  for (const seam of [0.075, 0.925, Math.exp(-25)]) {
    const below = seam * (1 - 1e-7);
    const above = seam * (1 + 1e-7);
    const density = Math.exp(-(normalQuantile(seam) ** 2) / 2) / Math.sqrt(2 * Math.PI);
    const slope = (normalQuantile(above) - normalQuantile(below)) / (above - below);
    expect(slope * density).toBeCloseTo(1, 6);
    expect(normalCdf(normalQuantile(seam)) / seam).toBeCloseTo(1, 13);
  }
});

test.each([-1e-300, 1.0000000000000002, Number.NaN, Number.POSITIVE_INFINITY])(
  "%d is no probability",
  (p) => {
    expect(() => normalQuantile(p)).toThrow(new InvalidArgumentError("p", p, "a probability from 0 to 1"));
  },
);
