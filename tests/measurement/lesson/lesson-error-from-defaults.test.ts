import {
  anticipateUncertainty,
  expectedMeanError,
  lessonErrorFromDefaults,
  lessonSlip,
} from "@tapewise/measurement";
import { expect, test } from "vitest";

const reading = {
  dimension: "hip-belt-girth",
  lengthMm: 950,
  stepMm: 5,
  conditions: { tool: "cord-and-ruler", measuredBy: "self" },
} as const;

test.each([1, 3, 10])("errs as an estimate of %i readings expects", (count) => {
  const expected = expectedMeanError(lessonErrorFromDefaults(reading), count);
  expect(expected.biasMm).toBe(0);
  expect(expected.sdMm).toBeCloseTo(anticipateUncertainty({ ...reading, count }), 9);
});

test("slips only when told to", () => {
  expect(lessonErrorFromDefaults(reading)).not.toHaveProperty("slip");
  expect(lessonErrorFromDefaults(reading, lessonSlip).slip).toEqual(lessonSlip);
});

test("refuses what is no reading", () => {
  expect(() => lessonErrorFromDefaults({ ...reading, lengthMm: 0 })).toThrow("lengthMm must be");
  expect(() => lessonErrorFromDefaults({ ...reading, stepMm: -1 })).toThrow("stepMm must be");
});
