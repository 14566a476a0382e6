import { type LessonError, lessonSlip } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { requireLessonError } from "../../../packages/measurement/src/lesson/lesson-error.ts";

const sound: LessonError = { biasMm: -3, lastingMm: 5, noiseMm: 6, stepMm: 1, slip: lessonSlip };

test("takes what is sound", () => {
  expect(requireLessonError(sound)).toBeUndefined();
  expect(requireLessonError({ biasMm: 0, lastingMm: 0, noiseMm: 0, stepMm: 0 })).toBeUndefined();
});

test("the slip of the lesson says that it is made up", () => {
  expect(lessonSlip.basis).toBe("assumption");
});

test.each([
  [{ biasMm: Number.POSITIVE_INFINITY }, "error.biasMm"],
  [{ lastingMm: -1 }, "error.lastingMm"],
  [{ noiseMm: Number.NaN }, "error.noiseMm"],
  [{ stepMm: -1 }, "error.stepMm"],
  [{ slip: { ...lessonSlip, chance: 1.1 } }, "error.slip.chance"],
  [{ slip: { ...lessonSlip, sizeMm: -20 } }, "error.slip.sizeMm"],
  [{ slip: { ...lessonSlip, direction: "up" as "longer" } }, "error.slip.direction"],
])("refuses %o", (change, argument) => {
  expect(() => requireLessonError({ ...sound, ...change })).toThrow(`${argument} must be`);
});
