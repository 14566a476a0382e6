import { anticipateError, anticipateUncertainty, errorDefaults } from "@tapewise/measurement";
import { expect, test } from "vitest";

const torso = { dimension: "torso-length", lengthMm: 430, stepMm: 1 } as const;

test("adds up to the uncertainty that is anticipated", () => {
  for (const measuredBy of ["self", "helper"] as const) {
    const conditions = { tool: "tape", measuredBy } as const;
    const { perReadingMm, lastingMm } = anticipateError({ ...torso, conditions });
    for (const count of [1, 4]) {
      expect(Math.hypot(lastingMm, perReadingMm / Math.sqrt(count))).toBeCloseTo(
        anticipateUncertainty({ ...torso, count, conditions }),
        6,
      );
    }
  }
});

test("knows the degrees of freedom of the table", () => {
  const { perReadingDegreesOfFreedom, lastingDegreesOfFreedom } = anticipateError({
    ...torso,
    conditions: {},
  });
  expect(perReadingDegreesOfFreedom).toBe(errorDefaults.degreesOfFreedom);
  // Several causes together are known better than the worst of them.
  expect(lastingDegreesOfFreedom).toBeGreaterThan(errorDefaults.degreesOfFreedom);
});

test("bones found afresh move from what lasts to what averages out", () => {
  const once = anticipateError({ ...torso, conditions: { landmarksFoundAfresh: false } });
  const afresh = anticipateError({ ...torso, conditions: { landmarksFoundAfresh: true } });
  expect(afresh.lastingMm).toBeLessThan(once.lastingMm);
  expect(afresh.perReadingMm).toBeGreaterThan(once.perReadingMm);
});

test("refuses what is no length", () => {
  expect(() => anticipateError({ ...torso, lengthMm: Number.NaN, conditions: {} })).toThrow("lengthMm");
});
