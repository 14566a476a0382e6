import { expect, test } from "vitest";
import { summariseOutput } from "../../../packages/measurement/src/uncertainty/summarise-output.ts";

test("twenty values at 90 %: one left out on either side", () => {
  // JCGM 101:2008, 7.7.2: q = 18, r = (20 − 18)/2 = 1, from the first to the nineteenth.
  const values = Float64Array.from({ length: 20 }, (_, i) => 20 - i);
  const output = summariseOutput(values, 0.9);
  expect(output.symmetric).toEqual({ lower: 1, upper: 19 });
  expect(output.value).toBe(10.5);
  // (20² − 1)/12 · 20/19
  expect(output.uncertainty).toBeCloseTo(Math.sqrt((399 / 12) * (20 / 19)), 13);
});

test("the shortest interval leaves a far end out", () => {
  const values = Float64Array.from([0, 1, 2, 3, 4, 5, 6, 7, 8, 100]);
  // Four in five: q = 8, r = 1. 0 to 8 is shorter than 1 to 100.
  expect(summariseOutput(values, 0.8).shortest).toEqual({ lower: 0, upper: 8 });
});

test("values that are all the same", () => {
  const output = summariseOutput(new Float64Array(100).fill(7), 0.95);
  expect(output).toEqual({
    value: 7,
    uncertainty: 0,
    symmetric: { lower: 7, upper: 7 },
    shortest: { lower: 7, upper: 7 },
  });
});
