import { fc, test } from "@fast-check/vitest";
import { cutSizes, overlapEffect } from "@tapewise/coverage";
import { interval } from "@tapewise/intervals";
import { createRandom } from "@tapewise/statistics";
import { expect } from "vitest";
import { countedArbitrary, normalArbitrary } from "./coverage-arbitraries.ts";

const dimension = "torso-length";
const span = fc.integer({ min: 5, max: 60 });
const runs = { numRuns: 25 };

test.prop([normalArbitrary, fc.integer({ min: 1, max: 6 }), span], runs)(
  "law: one more range serves at least as many, and no range serves more than its span allows",
  (population, count, spanMm) => {
    const { growth } = cutSizes({
      population,
      dimension,
      count: count + 1,
      goal: "served",
      spanMm,
      stepMm: 4,
    });
    for (const [k, { served }] of growth.entries()) {
      const before = growth[k - 1]?.served ?? 0;
      expect(served).toBeGreaterThanOrEqual(before - 1e-12);
      // What a further range adds is at most what the first and best one serves.
      expect(served - before).toBeLessThanOrEqual((growth[0]?.served ?? 0) + 1e-12);
    }
  },
);

test.prop([normalArbitrary, fc.integer({ min: 1, max: 6 }), fc.nat({ max: 40 })], runs)(
  "law: one more size never makes the expected misfit larger",
  (population, count, spanMm) => {
    const { growth } = cutSizes({
      population,
      dimension,
      count: count + 1,
      goal: "misfit",
      spanMm,
      stepMm: 4,
    });
    for (const [k, { expectedMisfitMm }] of growth.entries()) {
      expect(expectedMisfitMm).toBeLessThanOrEqual((growth[k - 1]?.expectedMisfitMm ?? Infinity) + 1e-9);
    }
  },
);

test.prop([fc.oneof(normalArbitrary, countedArbitrary), fc.integer({ min: 1, max: 3 }), span], runs)(
  "law: the ranges are the best of all on the grid: people served",
  (population, count, spanMm) => {
    const stepMm = 25;
    const best = cutSizes({ population, dimension, count, goal: "served", spanMm, stepMm });
    const people = population.distribution(dimension);
    const starts = Array.from({ length: 20 }, (_, k) => 250 + 25 * k);
    let most = 0;
    for (const chosen of combinations(starts, count)) {
      let [served, reached] = [0, Number.NEGATIVE_INFINITY];
      for (const from of chosen) {
        const isApart = from > reached;
        served += people.probability(
          interval(isApart ? from : reached, from + spanMm, { fromClosed: isApart }),
        );
        reached = from + spanMm;
      }
      most = Math.max(most, served);
    }
    expect(best.served).toBeCloseTo(most, 9);
  },
);

test.prop([normalArbitrary, fc.integer({ min: 1, max: 3 }), fc.nat({ max: 30 })], runs)(
  "law: the ranges are the best of all on the grid: expected misfit",
  (population, count, spanMm) => {
    const stepMm = 25;
    const best = cutSizes({ population, dimension, count, goal: "misfit", spanMm, stepMm });
    const people = population.distribution(dimension);
    // People at the middles of 1,000 equal parts: good to a few hundredths of a millimetre.
    const lengths = Array.from({ length: 1000 }, (_, k) => people.quantile((k + 0.5) / 1000));
    const distance = (chosen: readonly number[]) =>
      lengths.reduce(
        (sum, x) => sum + Math.min(...chosen.map((from) => Math.max(0, from - x, x - from - spanMm))),
        0,
      ) / 1000;
    const starts = Array.from({ length: 10 }, (_, k) => 325 + 25 * k);
    const least = Math.min(...combinations(starts, count).map(distance));
    expect(best.expectedMisfitMm).toBeLessThan(least + 0.1);
    expect(distance(best.ranges.map(({ fromMm }) => fromMm))).toBeCloseTo(best.expectedMisfitMm, 0);
  },
);

test.prop([normalArbitrary, fc.integer({ min: 2, max: 4 }), span, fc.integer({ min: -90, max: 90 })], runs)(
  "law: moving everybody moves the ranges with them",
  (population, count, spanMm, steps) => {
    const moved = { ...population, distribution: () => shifted };
    const original = population.distribution(dimension);
    const by = steps * 5;
    const shifted: typeof original = {
      ...original,
      mean: original.mean + by,
      cumulative: (x) => original.cumulative(x - by),
      quantile: (p) => original.quantile(p) + by,
      probability: (within) =>
        original.probability({ ...within, from: within.from - by, to: within.to - by }),
    };
    const request = { dimension, count, goal: "served", spanMm, stepMm: 5 } as const;
    const [here, there] = [cutSizes({ ...request, population }), cutSizes({ ...request, population: moved })];
    expect(there.served).toBeCloseTo(here.served, 12);
    expect(there.ranges.map(({ fromMm }) => fromMm - by)).toEqual(here.ranges.map(({ fromMm }) => fromMm));
  },
);

test.prop([normalArbitrary, fc.integer({ min: 1, max: 4 }), span], { numRuns: 10 })(
  "law: people drawn at random are served as the cuts say, within the error of drawing",
  (population, count, spanMm) => {
    const { ranges, served } = cutSizes({ population, dimension, count, goal: "served", spanMm, stepMm: 5 });
    const random = createRandom(11);
    const people = 3000;
    let hits = 0;
    for (let k = 0; k < people; k += 1) {
      const [torso = 0] = population.sample(random);
      if (ranges.some(({ fromMm, toMm }) => torso >= fromMm && torso <= toMm)) hits += 1;
    }
    const room = 5 * Math.sqrt((served * (1 - served)) / people) + 5 / people;
    expect(Math.abs(hits / people - served)).toBeLessThan(room);
  },
);

test.prop([normalArbitrary, fc.integer({ min: 2, max: 3 }), fc.integer({ min: 30, max: 60 })], {
  numRuns: 8,
})("law: the more a row overlaps, the fewer it reaches", (population, count, spanMm) => {
  const effects = overlapEffect({
    population,
    dimension,
    count,
    spanMm,
    overlapsMm: [0, 8, 16, 24],
    measuring: { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 },
  });
  for (const [k, { served, right, wrong }] of effects.entries()) {
    expect(served).toBeLessThanOrEqual((effects[k - 1]?.served ?? 1) + 1e-9);
    expect(right + wrong).toBeCloseTo(served, 9);
  }
});

/** Every choice of so many of some numbers, in their order. */
function combinations(from: readonly number[], count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return from.flatMap((first, k) =>
    combinations(from.slice(k + 1), count - 1).map((rest) => [first, ...rest]),
  );
}
