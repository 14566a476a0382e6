import { createRandom, summarise } from "@tapewise/statistics";
import { expect, test } from "vitest";
import { resample } from "../../packages/coverage/src/resample.ts";
import { counted, crew } from "./crew.ts";

test("another survey has the means and covariances of samples of its size", () => {
  const random = createRandom(3);
  const drawn = Array.from({ length: 2000 }, (_, k) =>
    resample(crew(0.5), ["torso-length", "hip-girth"], [50], random.fork(k)),
  );
  const of = (value: (k: number) => number) => {
    const { mean, sd = Number.NaN } = summarise(drawn.map((_, k) => value(k)));
    return { mean, sd };
  };
  const means = of((k) => drawn[k]?.mean[0] ?? 0);
  // The mean of 50 people has the standard deviation 25 / √50 = 3.5355; 2000 of them give it to about 1.6 %.
  expect(means.mean).toBeCloseTo(430, 0);
  expect(means.sd / 3.5355).toBeGreaterThan(0.95);
  expect(means.sd / 3.5355).toBeLessThan(1.05);
  const variances = of((k) => drawn[k]?.covariance[1]?.[1] ?? 0);
  // A sample variance of a normal variable: mean σ², sd σ² √(2 / (n − 1)).
  expect(variances.mean / 6400).toBeGreaterThan(0.98);
  expect(variances.mean / 6400).toBeLessThan(1.02);
  expect(variances.sd / (6400 * Math.sqrt(2 / 49))).toBeGreaterThan(0.94);
  expect(variances.sd / (6400 * Math.sqrt(2 / 49))).toBeLessThan(1.06);
  const covariances = of((k) => drawn[k]?.covariance[0]?.[1] ?? 0);
  // E = ρσ₁σ₂ = 1000, variance σ₁²σ₂²(1 + ρ²)/(n − 1).
  expect(covariances.mean / 1000).toBeGreaterThan(0.97);
  expect(covariances.mean / 1000).toBeLessThan(1.03);
  expect(covariances.sd / (2000 * Math.sqrt(1.25 / 49))).toBeGreaterThan(0.94);
  expect(covariances.sd / (2000 * Math.sqrt(1.25 / 49))).toBeLessThan(1.06);
});

test("a model that is no normal one is not drawn anew", () => {
  expect(resample(counted([400, 410]), ["torso-length"], [2], createRandom(1))).toBeUndefined();
});
