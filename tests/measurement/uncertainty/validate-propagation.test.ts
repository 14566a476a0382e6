import { type Simulation, validatePropagation } from "@tapewise/measurement";
import { expect, test } from "vitest";

const propagation = { value: 10, uncertainty: 1, degreesOfFreedom: Number.POSITIVE_INFINITY };
// k = 1.96: 8.04 to 11.96
const simulation: Simulation = {
  value: 10,
  uncertainty: 1,
  symmetric: { lower: 8.08, upper: 11.96 },
  shortest: { lower: 8, upper: 12 },
  probability: 0.95,
  trials: 1_000_000,
  tolerance: 0.005,
  reachedTolerance: 0.004,
  isStable: true,
};

test("holds the ends against half a unit of the last digit", () => {
  // δ is 0.05 for two digits of 1.0 and 0.5 for one.
  const two = validatePropagation(propagation, simulation, 2);
  expect(two).toMatchObject({ tolerance: 0.05, isValid: true, isConclusive: true });
  expect(two.lowerDifference).toBeCloseTo(0.04, 4);
  const far = { ...simulation, symmetric: { lower: 8.1, upper: 11.96 } };
  expect(validatePropagation(propagation, far, 2).isValid).toBe(false);
  expect(validatePropagation(propagation, far, 1)).toMatchObject({ tolerance: 0.5, isValid: true });
  const high = { ...simulation, symmetric: { lower: 8.04, upper: 12.02 } };
  expect(validatePropagation(propagation, high, 2).isValid).toBe(false);
});

test("says when the simulation is too coarse to tell", () => {
  expect(validatePropagation(propagation, { ...simulation, isStable: false }, 2).isConclusive).toBe(false);
  expect(validatePropagation(propagation, { ...simulation, reachedTolerance: 0.02 }, 2).isConclusive).toBe(
    false,
  );
});

test("refuses digits that are none, and an exact result", () => {
  expect(() => validatePropagation(propagation, simulation, 0)).toThrow("digits must be");
  expect(() => validatePropagation({ ...propagation, uncertainty: 0 }, simulation, 1)).toThrow(
    "uncertainty must be",
  );
});
