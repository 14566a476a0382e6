import { expect, test } from "vitest";
import {
  requireReadingError,
  uncertaintyOf,
} from "../../../packages/measurement/src/planning/reading-error.ts";

test("u² = l² + r²/n", () => {
  expect(uncertaintyOf({ perReadingMm: 8, lastingMm: 3 }, 4)).toBe(5);
  // Squares of these would overflow.
  expect(uncertaintyOf({ perReadingMm: 8e200, lastingMm: 3e200 }, 4) / 1e200).toBeCloseTo(5, 12);
});

test("refuses parts that are none", () => {
  expect(() => requireReadingError({ perReadingMm: Number.POSITIVE_INFINITY, lastingMm: 0 })).toThrow(
    "perReadingMm must be",
  );
  expect(() =>
    requireReadingError({ perReadingMm: 1, lastingMm: 0, perReadingDegreesOfFreedom: Number.NaN }),
  ).toThrow("perReadingDegreesOfFreedom must be");
});
