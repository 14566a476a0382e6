import { combineUncertainties } from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("combineUncertainties", () => {
  test("adds squares and weighs degrees of freedom by fourth powers", () => {
    const combined = combineUncertainties([
      { uncertainty: 3, degreesOfFreedom: 9 },
      { uncertainty: 4, degreesOfFreedom: 16 },
    ]);
    expect(combined.uncertainty).toBeCloseTo(5, 14);
    // 5⁴ / (3⁴/9 + 4⁴/16) = 625 / (9 + 16) = 25
    expect(combined.degreesOfFreedom).toBeCloseTo(25, 12);
  });

  test("leaves the degrees of freedom whole numbers or not", () => {
    const { degreesOfFreedom } = combineUncertainties([
      { uncertainty: 1, degreesOfFreedom: 3 },
      { uncertainty: 1, degreesOfFreedom: 4 },
    ]);
    // 4 / (1/3 + 1/4) = 48/7
    expect(degreesOfFreedom).toBeCloseTo(48 / 7, 12);
  });

  test("a component alone keeps what it has", () => {
    expect(combineUncertainties([{ uncertainty: 2, degreesOfFreedom: 5 }])).toEqual({
      uncertainty: 2,
      degreesOfFreedom: 5,
    });
  });

  test.each([[[]], [[{ uncertainty: 0, degreesOfFreedom: 3 }]]])(
    "without any uncertainty there is none, and it is known",
    (components) => {
      expect(combineUncertainties(components)).toEqual({
        uncertainty: 0,
        degreesOfFreedom: Number.POSITIVE_INFINITY,
      });
    },
  );

  test("components that are known give a result that is known", () => {
    const known = { uncertainty: 1, degreesOfFreedom: Number.POSITIVE_INFINITY };
    expect(combineUncertainties([known, known]).degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });

  test("neither huge nor tiny components overflow or vanish", () => {
    for (const scale of [1e-300, 1e-100, 1e100, 1e300]) {
      const combined = combineUncertainties([
        { uncertainty: 3 * scale, degreesOfFreedom: 9 },
        { uncertainty: 4 * scale, degreesOfFreedom: 16 },
      ]);
      expect(combined.uncertainty / scale).toBeCloseTo(5, 12);
      expect(combined.degreesOfFreedom).toBeCloseTo(25, 12);
    }
  });

  test.each([
    [{ uncertainty: -1, degreesOfFreedom: 3 }, "uncertainty"],
    [{ uncertainty: Number.NaN, degreesOfFreedom: 3 }, "uncertainty"],
    [{ uncertainty: Number.POSITIVE_INFINITY, degreesOfFreedom: 3 }, "uncertainty"],
    [{ uncertainty: 1, degreesOfFreedom: 0 }, "degreesOfFreedom"],
    [{ uncertainty: 1, degreesOfFreedom: -2 }, "degreesOfFreedom"],
    [{ uncertainty: 1, degreesOfFreedom: Number.NaN }, "degreesOfFreedom"],
  ])("refuses %o", (component, argument) => {
    expect(() => combineUncertainties([component])).toThrow(InvalidArgumentError);
    expect(() => combineUncertainties([component])).toThrow(`${argument} must be`);
  });
});
