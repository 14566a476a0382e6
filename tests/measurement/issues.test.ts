import { measurementIssues } from "@tapewise/measurement";
import { expect, test } from "vitest";

test("what keeps an estimate from being made is an error, what may be asked about it a warning", () => {
  const ofReadings = /^(?:readings?|error-model|conditions)-/;
  const errors = Object.entries(measurementIssues).filter(([, { severity }]) => severity === "error");
  expect(errors.map(([code]) => code).filter((code) => ofReadings.test(code))).toEqual([
    "readings-missing",
    "readings-not-a-list",
    "error-model-invalid",
    "conditions-invalid",
  ]);
});
