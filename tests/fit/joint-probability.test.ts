import { atMost, interval } from "@tapewise/intervals";
import { expect, test } from "vitest";
import { jointProbability, type Side } from "../../packages/fit/src/joint-probability.ts";

const side = (
  meanMm: number,
  sdMm: number,
  from: number,
  to: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
) => ({
  length: { meanMm, sdMm, degreesOfFreedom },
  interval: interval(from, to),
});
const independent = () => 0;

// Φ(1) − Φ(−1) = 0.682689 and Φ(0) = 0.5: standard normal table.
const oneScale = side(430, 10, 420, 440);
const half: Side = { ...side(900, 20, 0, 1), interval: atMost(900) };

test("independent lengths multiply", () => {
  expect(jointProbability([oneScale, half], independent)).toBeCloseTo(0.682689 / 2, 6);
  expect(jointProbability([oneScale], independent)).toBeCloseTo(0.682689, 6);
  expect(jointProbability([], independent)).toBe(1);
});

test("two halves with correlation ρ: 1/4 + asin ρ / 2π, also for Student's t, as the scores are normal", () => {
  for (const df of [3, 8, Number.POSITIVE_INFINITY]) {
    const first: Side = { length: { meanMm: 430, sdMm: 10, degreesOfFreedom: df }, interval: atMost(430) };
    expect(jointProbability([first, half], () => 0.6)).toBeCloseTo(0.25 + Math.asin(0.6) / (2 * Math.PI), 12);
  }
});

test("a length that is known depends on nothing", () => {
  const known = side(430, 0, 430, 440);
  expect(jointProbability([known, half], () => 1)).toBe(0.5);
  expect(jointProbability([side(430, 0, 431, 440), half], () => 1)).toBe(0);
});

test("one length held against two intervals must lie in what they share", () => {
  const twin: Side = { length: oneScale.length, interval: interval(430, 500) };
  // Φ(1) − Φ(0)
  expect(jointProbability([oneScale, twin], () => 1)).toBeCloseTo(0.682689 / 2, 6);
  expect(jointProbability([oneScale, half, twin], independent)).toBeCloseTo(0.682689 / 4, 6);
  const elsewhere: Side = { length: oneScale.length, interval: interval(450, 500) };
  expect(jointProbability([oneScale, elsewhere], () => 1)).toBe(0);
});

test("lengths that depend on each other through a third stand in one group", () => {
  const chain = (i: number, j: number) => (Math.abs(i - j) === 1 ? 0.5 : i === j ? 1 : 0);
  const halves = [430, 900, 380].map(
    (meanMm): Side => ({
      length: { meanMm, sdMm: 10, degreesOfFreedom: Number.POSITIVE_INFINITY },
      interval: atMost(meanMm),
    }),
  );
  // 1/8 + (asin ½ + asin ½ + asin 0)/4π = 1/8 + 1/12
  expect(jointProbability(halves, chain)).toBeCloseTo(1 / 8 + 1 / 12, 10);
});
