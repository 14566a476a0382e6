import { fc, test } from "@fast-check/vitest";
import {
  type Moments,
  median,
  mergeMoments,
  momentsOf,
  type QuantileType,
  sampleQuantile,
  summarise,
  summariseMoments,
} from "@tapewise/statistics";
import { expect } from "vitest";
import { anySample, anyShare, anyType, ordered } from "./statistics-arbitraries.ts";

/** Values are below 2000 in size and at most 80 together: sums are right to 1e-10, squares to 1e-6. */
function expectSame(a: Moments, b: Moments): void {
  expect([a.n, a.min, a.max]).toEqual([b.n, b.min, b.max]);
  expect(a.mean).toBeCloseTo(b.mean, 9);
  expect(Math.abs(a.squares - b.squares)).toBeLessThanOrEqual(1e-12 * b.squares + 1e-8);
}

const shuffled = (sample: readonly number[], seed: number): number[] =>
  sample
    .map((value, i) => ({ value, key: Math.sin(seed + i * i) }))
    .sort((a, b) => a.key - b.key)
    .map(({ value }) => value);

/** Powers of two and whole shifts, by which tenths change without new rounding worth the name. */
const scale = fc.constantFrom(0.25, 0.5, 1, 2, 8);
const shift = fc.integer({ min: -500, max: 500 });
const share = fc.oneof(fc.constantFrom(0, 0.25, 0.5, 0.75, 1), anyShare);

test.prop([anySample, anySample])("law: merged moments are the moments of everything", (a, b) => {
  expectSame(mergeMoments(momentsOf(a), momentsOf(b)), momentsOf([...a, ...b]));
});

test.prop([anySample, anySample, anySample])("law: moments merge in any order and grouping", (a, b, c) => {
  const [x, y, z] = [momentsOf(a), momentsOf(b), momentsOf(c)];
  expectSame(mergeMoments(mergeMoments(x, y), z), mergeMoments(x, mergeMoments(y, z)));
  expectSame(mergeMoments(x, y), mergeMoments(y, x));
});

test.prop([anySample])("law: moments summarise as the sample itself", (sample) => {
  const direct = summarise(sample);
  const merged = summariseMoments(sample.map((value) => momentsOf([value])).reduce(mergeMoments));
  expect([merged.n, merged.min, merged.max]).toEqual([direct.n, direct.min, direct.max]);
  expect(merged.mean).toBeCloseTo(direct.mean, 9);
  expect(merged.sd === undefined).toBe(direct.sd === undefined);
  expect(merged.sd ?? 0).toBeCloseTo(direct.sd ?? 0, 5);
});

test.prop([anySample, fc.integer(), anyType, share])(
  "law: the order of readings does not matter",
  (sample, seed, type, p) => {
    const other = shuffled(sample, seed % 1000);
    expect(sampleQuantile(other, p, type)).toBe(sampleQuantile(sample, p, type));
    expect(summarise(other).mean).toBeCloseTo(summarise(sample).mean, 10);
    expect(summarise(other).sd ?? 0).toBeCloseTo(summarise(sample).sd ?? 0, 9);
  },
);

test.prop([anySample, scale, shift])(
  "law: mean and deviation follow a change of unit and origin",
  (sample, by, plus) => {
    const moved = summarise(sample.map((value) => value * by + plus));
    const { mean, sd, min, max } = summarise(sample);
    expect(moved.mean).toBeCloseTo(mean * by + plus, 8);
    expect(moved.sd ?? 0).toBeCloseTo((sd ?? 0) * by, 8);
    expect([moved.min, moved.max]).toEqual([min * by + plus, max * by + plus]);
  },
);

test.prop([anySample])(
  "law: the mean lies between the least and the greatest, the deviation within half their gap",
  (sample) => {
    const { n, mean, sd, min, max } = summarise(sample);
    expect(mean).toBeGreaterThanOrEqual(min - 1e-9);
    expect(mean).toBeLessThanOrEqual(max + 1e-9);
    // Popoviciu's inequality for the variance over n.
    expect((sd ?? 0) * Math.sqrt((n - 1) / n)).toBeLessThanOrEqual((max - min) / 2 + 1e-9);
  },
);

test.prop([anySample, anyType, share])("law: a quantile lies within the sample", (sample, type, p) => {
  const value = sampleQuantile(sample, p, type);
  expect(value).toBeGreaterThanOrEqual(Math.min(...sample));
  expect(value).toBeLessThanOrEqual(Math.max(...sample));
  expect(sampleQuantile(sample, 1, type)).toBe(Math.max(...sample));
  expect(sampleQuantile(sample, 0, type)).toBe(Math.min(...sample));
});

test.prop([anySample, anyType, ordered(share)])(
  "law: a larger share never has a smaller quantile",
  (sample, type, [p, q]) => {
    expect(sampleQuantile(sample, p, type)).toBeLessThanOrEqual(sampleQuantile(sample, q, type) + 1e-9);
  },
);

test.prop([anySample, anyType, share, scale, shift])(
  "law: quantiles follow a change of unit and origin",
  (sample, type, p, by, plus) => {
    const moved = sampleQuantile(
      sample.map((value) => value * by + plus),
      p,
      type,
    );
    expect(moved).toBeCloseTo(sampleQuantile(sample, p, type) * by + plus, 8);
  },
);

test.prop([anySample, fc.constantFrom<QuantileType[]>(5, 6, 7, 8, 9), fc.integer({ min: 0, max: 64 })])(
  "law: types 5 to 9 see a mirrored sample mirrored",
  (sample, type, parts) => {
    const p = parts / 64;
    const mirrored = sample.map((value) => -value);
    expect(sampleQuantile(mirrored, 1 - p, type)).toBeCloseTo(-sampleQuantile(sample, p, type), 8);
  },
);

test.prop([anySample, fc.integer({ min: 1, max: 64 })])(
  "law: type 1 is the least value that a share p of the sample does not exceed",
  (sample, parts) => {
    const p = parts / 64;
    const reached = (x: number) => sample.filter((value) => value <= x).length >= p * sample.length;
    expect(sampleQuantile(sample, p, 1)).toBe(Math.min(...sample.filter(reached)));
  },
);

test.prop([anySample, fc.constantFrom<QuantileType[]>(2, 5, 6, 7, 8, 9)])(
  "law: the median has as many values below as above",
  (sample, type) => {
    const middle = median(sample);
    expect(sampleQuantile(sample, 0.5, type)).toBeCloseTo(middle, 9);
    const below = sample.filter((value) => value < middle).length;
    const above = sample.filter((value) => value > middle).length;
    expect(below).toBeLessThanOrEqual(sample.length / 2);
    expect(above).toBeLessThanOrEqual(sample.length / 2);
  },
);
