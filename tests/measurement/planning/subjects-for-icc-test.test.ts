import { type IccTestPlan, subjectsForIccTest } from "@tapewise/measurement";
import { expect, test } from "vitest";

const plan: IccTestPlan = { least: 0.5, expected: 0.75, repeats: 2 };

test("more to show, more subjects", () => {
  const usual = subjectsForIccTest(plan);
  expect(subjectsForIccTest({ ...plan, least: 0.6 })).toBeGreaterThan(usual);
  expect(subjectsForIccTest({ ...plan, power: 0.9 })).toBeGreaterThan(usual);
  expect(subjectsForIccTest({ ...plan, sides: 2 })).toBeGreaterThan(usual);
  expect(subjectsForIccTest({ ...plan, sides: 2, significance: 0.1 })).toBe(usual);
});

test("never fewer than two", () => {
  expect(subjectsForIccTest({ least: 0, expected: 0.999999, repeats: 2 })).toBe(2);
});

test.each([
  [{ least: -0.1 }, "least"],
  [{ expected: 0.5 }, "expected"],
  [{ expected: 1 }, "expected"],
  [{ repeats: 1 }, "repeats"],
  [{ significance: 0 }, "significance"],
  [{ power: 1 }, "power"],
  [{ power: 0.01 }, "power"],
  [{ sides: 3 as 2 }, "sides"],
  [{ least: 0.5, expected: 0.5 + 1e-16 * 2 }, "expected"],
])("refuses %o", (change, argument) => {
  expect(() => subjectsForIccTest({ ...plan, ...change })).toThrow(`${argument} must be`);
});
