import { fc, test } from "@fast-check/vitest";
import {
  drawReadings,
  expectedMeanError,
  histogramOf,
  type LessonError,
  resampleAveraging,
  runningMean,
  simulateAveraging,
} from "@tapewise/measurement";
import { createRandom, median, summarise } from "@tapewise/statistics";
import { describe, expect, test as plain } from "vitest";

const lengthArbitrary = fc.double({ min: 300, max: 1200, noNaN: true });
const seedArbitrary = fc.integer({ min: 0, max: Number.MAX_SAFE_INTEGER });
const sdArbitrary = fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 20, noNaN: true }));
const errorArbitrary: fc.Arbitrary<LessonError> = fc.record(
  {
    biasMm: fc.double({ min: -20, max: 20, noNaN: true }),
    lastingMm: sdArbitrary,
    noiseMm: sdArbitrary,
    stepMm: fc.constantFrom(0, 1, 5, 25.4),
    slip: fc.record({
      chance: fc.double({ min: 0, max: 1, noNaN: true }),
      sizeMm: fc.double({ min: 0, max: 50, noNaN: true }),
      direction: fc.constantFrom("longer" as const, "shorter" as const, "either" as const),
    }),
  },
  { requiredKeys: ["biasMm", "lastingMm", "noiseMm", "stepMm"] },
);

test.prop([lengthArbitrary, errorArbitrary, fc.integer({ min: 1, max: 30 }), seedArbitrary])(
  "law: the same seed gives the same series, and a longer one begins with it",
  (lengthMm, error, count, seed) => {
    const series = drawReadings({ lengthMm, error, count, seed });
    expect(drawReadings({ lengthMm, error, count, seed })).toEqual(series);
    const longer = drawReadings({ lengthMm, error, count: count + 5, seed });
    expect(longer.readingsMm.slice(0, count)).toEqual(series.readingsMm);
    expect(series.readingsMm.every(Number.isFinite)).toBe(true);
  },
);

test.prop([fc.array(fc.double({ min: 300, max: 1200, noNaN: true }), { minLength: 1, maxLength: 40 })])(
  "law: the running mean is the mean of the readings so far, its median their median",
  (readings) => {
    for (const { count, meanMm, medianMm, sdMm, lowerMm, upperMm } of runningMean(readings)) {
      const sofar = readings.slice(0, count);
      const { mean, sd } = summarise(sofar);
      expect(Math.abs(meanMm - mean)).toBeLessThan(1e-9);
      expect(Math.abs(medianMm - median(sofar))).toBeLessThan(1e-9);
      expect(Math.abs((sdMm ?? 0) - (sd ?? 0))).toBeLessThan(1e-6);
      expect((lowerMm ?? meanMm) <= meanMm && meanMm <= (upperMm ?? meanMm)).toBe(true);
    }
  },
);

test.prop([errorArbitrary, fc.integer({ min: 1, max: 50 }), fc.integer({ min: 1, max: 50 })])(
  "law: more readings are never expected to be worse, nor better than what lasts and what is biased",
  (error, one, other) => {
    const few = expectedMeanError(error, Math.min(one, other));
    const many = expectedMeanError(error, Math.max(one, other));
    expect(many.biasMm).toBe(few.biasMm);
    expect(many.sdMm).toBeLessThanOrEqual(few.sdMm * (1 + 1e-12));
    expect(many.rmseMm).toBeGreaterThanOrEqual(Math.hypot(error.lastingMm, many.biasMm) * (1 - 1e-12));
  },
);

test.prop([fc.double({ min: 0.01, max: 50, noNaN: true }), fc.integer({ min: 1, max: 1000 })])(
  "law: the mean of n unbiased independent readings has the variance σ²/n, exactly",
  (noiseMm, count) => {
    const { biasMm, sdMm } = expectedMeanError({ biasMm: 0, lastingMm: 0, noiseMm, stepMm: 0 }, count);
    expect(biasMm).toBe(0);
    expect(Math.abs((sdMm ** 2 * count) / noiseMm ** 2 - 1)).toBeLessThan(1e-14);
  },
);

test.prop([fc.double({ min: 0.5, max: 20, noNaN: true }), seedArbitrary], { numRuns: 20 })(
  "law: the mean of n unbiased independent readings has the variance σ²/n, within what the draws allow",
  (noiseMm, seed) => {
    const runs = 2000;
    const error = { biasMm: 0, lastingMm: 0, noiseMm, stepMm: 0 };
    for (const { count, mean } of simulateAveraging({
      lengthMm: 436,
      error,
      counts: [1, 2, 5, 10],
      runs,
      seed,
    })) {
      const variance = noiseMm ** 2 / count;
      // A variance from N normal draws is known to ±√(2/N) of itself; six of these, with 80 of them looked at.
      expect(Math.abs(mean.sdMm ** 2 / variance - 1)).toBeLessThan(6 * Math.sqrt(2 / runs));
      expect(Math.abs(mean.biasMm)).toBeLessThan(6 * Math.sqrt(variance / runs));
    }
  },
);

test.prop([lengthArbitrary, errorArbitrary, seedArbitrary], { numRuns: 40 })(
  "law: figures of a simulation hang together",
  (lengthMm, error, seed) => {
    const runs = 200;
    const sizes = [
      { from: 0, to: 500 },
      { from: 480, to: 900 },
    ];
    for (const { mean, median: middle } of simulateAveraging({
      lengthMm,
      error,
      runs,
      seed,
      sizes,
      counts: [1, 4],
    })) {
      for (const spread of [mean, middle]) {
        // rmse² = bias² + sd² (N − 1)/N
        const square = spread.biasMm ** 2 + (spread.sdMm ** 2 * (runs - 1)) / runs;
        expect(Math.abs(spread.rmseMm ** 2 - square)).toBeLessThan(1e-6 * (1 + square));
        expect([...spread.quantilesMm]).toEqual([...spread.quantilesMm].sort((a, b) => a - b));
        expect(spread.wrongShare).toBeGreaterThanOrEqual(0);
        expect(spread.wrongShare).toBeLessThanOrEqual(1);
        expect(spread.valuesMm.length).toBe(runs);
      }
    }
  },
);

test.prop([fc.array(fc.integer({ min: 400, max: 480 }), { minLength: 2, maxLength: 30 }), seedArbitrary], {
  numRuns: 40,
})("law: what is drawn from a class stays between its readings", (readingsMm, seed) => {
  for (const { mean, median: middle } of resampleAveraging({
    readingsMm,
    seed,
    runs: 100,
    counts: [1, 3, 5],
  })) {
    for (const { valuesMm } of [mean, middle]) {
      expect(valuesMm[0]).toBeGreaterThanOrEqual(Math.min(...readingsMm) - 1e-9);
      expect(valuesMm.at(-1)).toBeLessThanOrEqual(Math.max(...readingsMm) + 1e-9);
    }
  }
});

test.prop([
  fc.array(fc.double({ min: -500, max: 1500, noNaN: true }), { minLength: 1, maxLength: 100 }),
  fc.double({ min: 0.5, max: 100, noNaN: true }),
])("law: a histogram counts every value once", (values, width) => {
  const bars = histogramOf(values, width);
  expect(bars.reduce((sum, { count }) => sum + count, 0)).toBe(values.length);
  expect(bars[0]?.count).toBeGreaterThan(0);
  expect(bars.at(-1)?.count).toBeGreaterThan(0);
});

describe("the band of a running mean", () => {
  plain.each([2, 5, 10])(
    "law: of %i readings without bias it holds the length in 95 of 100 series, and with a bias it does not",
    (count) => {
      const series = 3000;
      const heldWith = (biasMm: number) => {
        const seeds = createRandom(9).fork(count);
        let held = 0;
        for (let i = 0; i < series; i += 1) {
          const { readingsMm } = drawReadings({
            lengthMm: 436,
            error: { biasMm, lastingMm: 0, noiseMm: 6, stepMm: 0 },
            count,
            seed: seeds.integer(0, 1e9),
          });
          const last = runningMean(readingsMm).at(-1);
          if ((last?.lowerMm ?? 0) <= 436 && 436 <= (last?.upperMm ?? 0)) held += 1;
        }
        return held / series;
      };
      const deviation = Math.sqrt((0.95 * 0.05) / series);
      expect(Math.abs(heldWith(0) - 0.95)).toBeLessThan(4 * deviation);
      expect(heldWith(8)).toBeLessThan(0.95 - 4 * deviation);
    },
  );
});
