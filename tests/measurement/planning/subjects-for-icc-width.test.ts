import { subjectsForIccWidth } from "@tapewise/measurement";
import { expect, test } from "vitest";

const plan = { icc: 0.6, repeats: 2, width: 0.2 };

test("adds five times the correlation only for two readings and from 0.7 on", () => {
  // 8 · 1.95996² · 0.4² · 1.6² / (2 · 0.04) + 1 = 158.35
  expect(subjectsForIccWidth(plan)).toBe(159);
  // 8 · 1.95996² · 0.3² · 1.7² / (2 · 0.04) + 1 = 100.91, and 3.5 more
  expect(subjectsForIccWidth({ ...plan, icc: 0.7 })).toBe(105);
});

test("half the width takes four times as many, but for one", () => {
  const wide = subjectsForIccWidth({ ...plan, width: 0.1 }) - 1;
  const narrow = subjectsForIccWidth({ ...plan, width: 0.05 }) - 1;
  expect(Math.abs(narrow - 4 * wide)).toBeLessThan(4);
});

test.each([
  [{ icc: 1 }, "icc"],
  [{ repeats: 1 }, "repeats"],
  [{ width: 0 }, "width"],
  [{ width: 1e-9 }, "width"],
  [{ probability: 95 }, "probability"],
])("refuses %o", (change, argument) => {
  expect(() => subjectsForIccWidth({ ...plan, ...change })).toThrow(`${argument} must be`);
});
