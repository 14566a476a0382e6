import { isChoice } from "tapewise/batch";
import { expect, test } from "vitest";

test("isChoice tells answers from issues", () => {
  expect(isChoice({ id: null, estimates: {}, choices: [] })).toBe(true);
  expect(isChoice({ id: null, issues: [] })).toBe(false);
});
