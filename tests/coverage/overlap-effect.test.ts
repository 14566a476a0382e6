import { choiceErrors, type OverlapRequest, overlapEffect } from "@tapewise/coverage";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { crew, torsoChart } from "./crew.ts";

const request: OverlapRequest = {
  population: crew(),
  dimension: "torso-length",
  count: 2,
  spanMm: 50,
  overlapsMm: [0, 10, 30],
  measuring: { conditions: { measuredBy: "self" }, readings: 3, stepMm: 5 },
};

test("a row of two sizes reaches from a span on either side of the mean, less half the overlap", () => {
  const effects = overlapEffect(request);
  expect(effects.map(({ fromMm, toMm }) => [fromMm, toMm])).toEqual([
    [380, 480],
    [385, 475],
    [395, 465],
  ]);
  // pnorm of 2, 1.8 and 1.4 to both sides, recomputed with R 4.2.2.
  expect(effects[0]?.served).toBeCloseTo(0.9544997361036416, 13);
  expect(effects[1]?.served).toBeCloseTo(0.9281393617741485, 13);
  expect(effects[2]?.served).toBeCloseTo(0.8384866815324579, 13);
});

test("wrong choices are those of the same sizes as a chart", () => {
  const [touching, overlapping] = overlapEffect(request);
  const chart = torsoChart({ A: [380, 430], B: [430, 480] });
  expect(touching?.wrong).toBeCloseTo(unwrap(choiceErrors(chart, crew(), request.measuring)).wrong, 10);
  expect(overlapping?.wrong).toBeLessThan(touching?.wrong ?? 0);
  expect(touching?.right).toBeCloseTo((touching?.served ?? 0) - (touching?.wrong ?? 0), 12);
});

test("a programmer's mistakes throw", () => {
  for (const wrong of [
    { ...request, overlapsMm: [50] },
    { ...request, overlapsMm: [-1] },
    { ...request, count: 0 },
    { ...request, spanMm: 0 },
    { ...request, dimension: "stature" as const },
  ]) {
    expect(() => overlapEffect(wrong)).toThrow(InvalidArgumentError);
  }
});
