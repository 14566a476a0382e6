import { meanOfCorrelated } from "@tapewise/measurement";
import { expect, test } from "vitest";

test("independent readings average as 1/√n, wholly correlated ones not at all", () => {
  const readings = [430, 434, 438, 442];
  expect(meanOfCorrelated(readings, 8, 0)).toEqual({ mm: 436, uncertaintyMm: 4, effectiveCount: 4 });
  expect(meanOfCorrelated(readings, 8, 1)).toEqual({ mm: 436, uncertaintyMm: 8, effectiveCount: 1 });
  expect(meanOfCorrelated([430], 8, -1)).toEqual({ mm: 430, uncertaintyMm: 8, effectiveCount: 1 });
});

test("readings that cancel each other leave nothing", () => {
  expect(meanOfCorrelated([430, 434], 8, -1)).toEqual({
    mm: 432,
    uncertaintyMm: 0,
    effectiveCount: Number.POSITIVE_INFINITY,
  });
});

test.each([
  [[], 8, 0, "readingsMm"],
  [[Number.NaN], 8, 0, "readingsMm[0]"],
  [[430], -8, 0, "uncertaintyMm"],
  [[430, 431, 432], 8, -0.6, "correlation"],
  [[430, 431, 432], 8, 1.1, "correlation"],
])("refuses %j, %f, %f", (readings, uncertainty, correlation, argument) => {
  expect(() => meanOfCorrelated(readings, uncertainty, correlation)).toThrow(`${argument} must be`);
});
