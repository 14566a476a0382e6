import { errorDefaults } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

describe("errorDefaults", () => {
  const hands = Object.entries(errorDefaults.hands);

  test("covers every kind of dimension, both hands and every tool", () => {
    expect(hands.map(([kind]) => kind).sort()).toEqual([
      "breadth",
      "girth",
      "length along the body",
      "straight height",
    ]);
    expect(Object.keys(errorDefaults.tools).sort()).toEqual(["cord-and-ruler", "short-rule", "tape"]);
  });

  test.each(hands)("a helper is never worse than oneself at a %s", (_kind, { self, helper }) => {
    for (const part of ["handlingMm", "findingMm", "lastingMm"] as const) {
      expect(helper[part]).toBeGreaterThan(0);
      expect(helper[part]).toBeLessThanOrEqual(self[part]);
    }
  });

  test("one reading of oneself is off by a centimetre or so, as common practice has it", () => {
    for (const [, { self }] of hands) {
      const all = Math.hypot(self.handlingMm, self.findingMm, self.lastingMm);
      expect(all).toBeGreaterThan(8);
      expect(all).toBeLessThan(15);
    }
  });

  test("says that it is assumed, and how firmly: a quarter off is eight degrees of freedom (GUM G.4.2)", () => {
    expect(errorDefaults.basis).toBe("assumption");
    expect(errorDefaults.degreesOfFreedom).toBe(0.5 * 0.25 ** -2);
  });
});
