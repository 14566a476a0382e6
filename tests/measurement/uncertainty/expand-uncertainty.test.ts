import { expandUncertainty } from "@tapewise/measurement";
import { expect, test } from "vitest";

test("is the uncertainty times Student's t", () => {
  const { factor, expanded, lower, upper } = expandUncertainty(
    { value: 100, uncertainty: 2, degreesOfFreedom: 1 },
    0.5,
  );
  // The quartile of Student's t with one degree of freedom is tan(π/4) = 1.
  expect(factor).toBeCloseTo(1, 14);
  expect([expanded, lower, upper].map((mm) => mm.toFixed(12))).toEqual([
    "2.000000000000",
    "98.000000000000",
    "102.000000000000",
  ]);
});

test("an exact result stays exact", () => {
  const exact = { value: 5, uncertainty: 0, degreesOfFreedom: 3 };
  expect(expandUncertainty(exact, 0.99)).toMatchObject({ expanded: 0, lower: 5, upper: 5 });
});

test.each([
  [{ value: Number.NaN, uncertainty: 1, degreesOfFreedom: 1 }, 0.9, "value"],
  [{ value: 0, uncertainty: -1, degreesOfFreedom: 1 }, 0.9, "uncertainty"],
  [{ value: 0, uncertainty: 1, degreesOfFreedom: 0 }, 0.9, "degreesOfFreedom"],
  [{ value: 0, uncertainty: 1, degreesOfFreedom: 1 }, 1, "probability"],
])("refuses %o at %f", (result, probability, argument) => {
  expect(() => expandUncertainty(result, probability)).toThrow(`${argument} must be`);
});
