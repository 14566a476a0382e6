import {
  type InputDistribution,
  type LessonError,
  type MeasurementModel,
  planReadings,
  type ReadingPlan,
  simulateAveraging,
} from "@tapewise/measurement";
import { expect, expectTypeOf, test } from "vitest";

test("a plan has a count only where it is reachable", () => {
  const plan: ReadingPlan = planReadings({ perReadingMm: 8, lastingMm: 3 }, { standardMm: 5 });
  // @ts-expect-error a plan that is not known to be reachable has no count
  expect(plan.count).toBe(4);
  if (plan.isReachable) expectTypeOf(plan.count).toEqualTypeOf<number>();
  else expectTypeOf(plan.reason).toEqualTypeOf<"lasting" | "too-many">();
});

test("a target is a standard uncertainty, or an expanded one with its probability", () => {
  const error = { perReadingMm: 8, lastingMm: 3 };
  // @ts-expect-error an expanded uncertainty means nothing without a probability
  expect(() => planReadings(error, { expandedMm: 10 })).toThrow();
});

test("a distribution takes only its own figures", () => {
  // @ts-expect-error a rectangle has bounds, not a standard deviation
  const rectangle: InputDistribution = { shape: "rectangular", mean: 0, sd: 1 };
  expect(rectangle.shape).toBe("rectangular");
});

test("a lesson needs a seed and every part of the error", () => {
  const error: LessonError = { biasMm: 0, lastingMm: 0, noiseMm: 6, stepMm: 1 };
  // @ts-expect-error nothing is drawn from an unknown seed
  expect(() => simulateAveraging({ lengthMm: 436, error })).toThrow();
  // @ts-expect-error a step that is left out would be a guess
  const half: LessonError = { biasMm: 0, lastingMm: 0, noiseMm: 6 };
  expect(half.noiseMm).toBe(6);
});

test("a model reads its values and cannot write them", () => {
  const model: MeasurementModel = (values) => {
    // @ts-expect-error the values belong to the caller
    values[0] = 1;
    return Number(values[0]);
  };
  expect(model([2])).toBe(1);
});
