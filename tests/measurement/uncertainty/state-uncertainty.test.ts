import { stateUncertainty } from "@tapewise/measurement";
import { expect, test } from "vitest";

const result = { value: 436.24, uncertainty: 4, degreesOfFreedom: Number.POSITIVE_INFINITY };

test("leaves degrees of freedom out where there are plenty", () => {
  // 1.96 · 4 = 7.84
  expect(stateUncertainty(result, { unit: "cm" })).toBe(
    "43.6 cm ± 0.8 cm (95 % interval, k = 1.96), from a standard uncertainty of 0.4 cm",
  );
});

test("writes inches, and another probability", () => {
  // 436.24 / 25.4 = 17.1748…, 4 / 25.4 = 0.157…, k = 2.576
  expect(stateUncertainty(result, { unit: "in", probability: 0.99 })).toBe(
    "17.17 in ± 0.41 in (99 % interval, k = 2.58), from a standard uncertainty of 0.16 in",
  );
});

test("shows a digit of a small uncertainty", () => {
  expect(stateUncertainty({ ...result, uncertainty: 0.04, degreesOfFreedom: 9.9 }, { unit: "cm" })).toContain(
    "a standard uncertainty of 0.004 cm with 9 effective degrees of freedom",
  );
});

test("refuses what is no result", () => {
  expect(() => stateUncertainty({ ...result, value: Number.NaN }, { unit: "cm" })).toThrow("value must be");
  expect(() => stateUncertainty(result, { unit: "cm", probability: 95 })).toThrow("probability must be");
});
