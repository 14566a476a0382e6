import { expect, test } from "vitest";
import { writtenStep } from "../../packages/measurement/src/written-step.ts";
import { readingsOf } from "./readings.ts";

test.each([
  ["43.2 cm, 44 cm, 43.55 cm", 0.1],
  ["432 mm, 44 cm, 0.43 m", 1],
  ["17 in, 17 1/8 in, 1 ft 5 in", 25.4 / 8],
  ["17 in, 43.2 cm, 44 cm", 25.4],
  ["17 1/64 in, 43 cm", 10],
  ["17 in", 25.4],
])("of %s it is %f mm", (texts, step) => {
  expect(writtenStep(readingsOf(texts))).toBe(step);
});
