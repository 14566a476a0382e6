import { observerAllowances, parseStudy, safeCompareAllowance } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";

test("the published limits", () => {
  // Hotzman et al. 2011, NATICK/TR-11/017, Appendix G, read second-hand.
  expect(Object.fromEntries(observerAllowances.map(({ dimension, mm }) => [dimension, mm]))).toEqual({
    stature: 6,
    "shoulder-breadth": 8,
    "shoulder-length": 3,
    "neck-base-girth": 8,
    "chest-girth": 14,
    "hip-girth": 12,
  });
});

test("a difference of just the limit is within it, in any unit", () => {
  const study = parseStudy("subject,stature A1 (cm),stature A2 (cm)\nmia,170.3,170.9\nleo,180.1,180.8\n");
  // 6 mm and 7 mm against 6 mm.
  const { sameMeasurer, twoMeasurers } = unwrap(safeCompareAllowance(study));
  expect(sameMeasurer).toEqual({ pairs: 2, beyond: 1, largestMm: 7 });
  expect(twoMeasurers).toBeUndefined();
});

test.each([
  ["subject,torso A1 (mm),torso A2 (mm)\nmia,430,434\n", "allowance-unknown"],
  ["subject,A1 (mm),A2 (mm)\nmia,430,434\n", "allowance-unknown"],
  ["subject,stature A1 (mm)\nmia,1700\nleo,1710\n", "allowance-no-pairs"],
])("%j has nothing to compare", (text, code) => {
  expect(safeCompareAllowance(parseStudy(text)).issues.map((issue) => issue.code)).toEqual([code]);
});
