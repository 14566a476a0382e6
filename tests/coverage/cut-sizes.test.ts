import { type CutRequest, cutSizes } from "@tapewise/coverage";
import { InvalidArgumentError } from "@tapewise/outcome";
import { referencePopulation } from "@tapewise/population";
import { describe, expect, test } from "vitest";
import { counted, crew, uniform } from "./crew.ts";

const dimension = "torso-length";

describe("people served, by hand", () => {
  test("k ranges of span w serve k·w of people who are spread evenly", () => {
    const { growth } = cutSizes({ population: uniform(), dimension, count: 6, goal: "served", spanMm: 18 });
    // 18 people in each range of 18 mm, until all 100 are served.
    expect(growth.map(({ served }) => Number(served.toFixed(12)))).toEqual([0.18, 0.36, 0.54, 0.72, 0.9, 1]);
  });

  test("one range lies around the mean of a normal curve and serves 2Φ(w/2σ) − 1", () => {
    const cuts = cutSizes({ population: crew(), dimension, count: 1, goal: "served", spanMm: 100 });
    expect(cuts.ranges.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([[380, 480]]);
    // w/2σ = 2; 2 pnorm(2) − 1 recomputed with R 4.2.2.
    expect(cuts.served).toBeCloseTo(0.9544997361036416, 13);
  });

  test("two ranges lie side by side around the mean", () => {
    const cuts = cutSizes({ population: crew(), dimension, count: 2, goal: "served", spanMm: 50 });
    expect(cuts.ranges.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([
      [380, 430],
      [430, 480],
    ]);
    expect(cuts.served).toBeCloseTo(0.9544997361036416, 13);
  });
});

describe("misfit, by hand", () => {
  test("one fixed length is the median, and the expected distance of a normal curve σ √(2/π)", () => {
    const cuts = cutSizes({ population: crew(), dimension, count: 1, goal: "misfit" });
    expect(cuts.ranges.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([[430, 430]]);
    expect(cuts.expectedMisfitMm).toBeCloseTo(25 * Math.sqrt(2 / Math.PI), 6);
    expect(cuts.ranges[0]?.nearest).toBe(1);
  });

  test("fixed lengths of people who are spread evenly lie evenly", () => {
    const cuts = cutSizes({ population: uniform(), dimension, count: 2, goal: "misfit", stepMm: 5 });
    expect(cuts.ranges.map(({ fromMm }) => fromMm)).toEqual([425, 475]);
    // Distances of 0.5, 1.5 … 24.5 to either side: 12.5 on average.
    expect(cuts.expectedMisfitMm).toBeCloseTo(12.5, 1);
    for (const { nearest } of cuts.ranges) expect(nearest).toBeCloseTo(0.5, 12);
  });

  test("one range around the mean: the expected distance beyond its ends, 2σ (φ(z) − z Φ(−z))", () => {
    const cuts = cutSizes({ population: crew(), dimension, count: 1, goal: "misfit", spanMm: 50 });
    expect(cuts.ranges.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([[405, 455]]);
    // z = 1: φ(1) = 0.24197072451914337, Φ(−1) = 0.15865525393145707 (recomputed with R 4.2.2).
    expect(cuts.expectedMisfitMm).toBeCloseTo(50 * (0.24197072451914337 - 0.15865525393145707), 6);
  });
});

test("ranges begin at multiples of the step", () => {
  const { ranges, stepMm } = cutSizes({
    population: referencePopulation("women"),
    dimension,
    count: 3,
    goal: "served",
    spanMm: 45,
    stepMm: 10,
  });
  expect(stepMm).toBe(10);
  for (const { fromMm, toMm } of ranges) expect([fromMm % 10, toMm - fromMm]).toEqual([0, 45]);
});

test("a span that holds everybody serves everybody", () => {
  const { growth } = cutSizes({ population: uniform(), dimension, count: 3, goal: "served", spanMm: 500 });
  expect(growth.map(({ served }) => served)).toEqual([1, 1, 1]);
});

test("there may be more sizes than anybody needs", () => {
  const alike = counted([430, 430]);
  const cuts = cutSizes({ population: alike, dimension, count: 4, goal: "served", spanMm: 10, stepMm: 25 });
  // Ranges begin at 425: those above it serve nobody.
  expect(cuts.growth.map(({ served }) => served)).toEqual([1, 1, 1, 1]);
});

test("a programmer's mistakes throw", () => {
  const basis = { population: crew(), dimension, count: 2, goal: "served", spanMm: 50 } as const;
  const wrong: readonly CutRequest[] = [
    { ...basis, count: 0 },
    { ...basis, spanMm: 0 },
    { ...basis, spanMm: Number.NaN },
    { ...basis, stepMm: 0 },
    { ...basis, stepMm: 0.001 },
    { ...basis, dimension: "stature" },
  ];
  for (const request of wrong) expect(() => cutSizes(request)).toThrow(InvalidArgumentError);
});
