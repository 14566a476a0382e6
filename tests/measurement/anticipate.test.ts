import {
  type Anticipation,
  anticipateUncertainty,
  anticipateUnchecked,
  parseEstimate,
} from "@tapewise/measurement";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { readingsOf } from "./readings.ts";

const three: Anticipation = {
  dimension: "torso-length",
  lengthMm: 437,
  count: 3,
  stepMm: 1,
  conditions: { tool: "tape", measuredBy: "self", landmarksFoundAfresh: false },
};

describe("anticipateUncertainty", () => {
  test("is the uncertainty of readings that scatter just as the method does", () => {
    // 6²/3 + 1²/12/3 + 5² + 5² + (0.003 · 437)²/3
    const variance = 12 + 1 / 36 + 50 + (0.003 * 437) ** 2 / 3;
    expect(anticipateUncertainty(three)).toBeCloseTo(Math.sqrt(variance), 12);
  });

  test("for one reading is what the reading will have", () => {
    const estimate = parseEstimate({ dimension: "torso-length", readings: readingsOf("437 mm") });
    expect(anticipateUncertainty({ ...three, count: 1 })).toBeCloseTo(estimate.uncertaintyMm, 12);
  });

  test("without rounding has none", () => {
    const variance = 12 + 50 + (0.003 * 437) ** 2 / 3;
    expect(anticipateUncertainty({ ...three, stepMm: 0 })).toBeCloseTo(Math.sqrt(variance), 12);
  });

  test("falls with every further reading, to what lasts", () => {
    const many = [1, 2, 3, 5, 10, 100, 1e6].map((count) => anticipateUncertainty({ ...three, count }));
    expect(many).toEqual(many.toSorted((a, b) => b - a));
    expect(many.at(-1)).toBeCloseTo(Math.sqrt(50 + (0.003 * 437) ** 2 / 3), 3);
  });

  test.each<[object, string]>([
    [{ count: 0 }, "count must be"],
    [{ count: 2.5 }, "count must be"],
    [{ count: Number.NaN }, "count must be"],
    [{ lengthMm: 0 }, "lengthMm must be"],
    [{ lengthMm: Number.POSITIVE_INFINITY }, "lengthMm must be"],
    [{ lengthMm: 1e200 }, "lengthMm must be"],
    [{ stepMm: -1 }, "stepMm must be"],
    [{ stepMm: Number.NaN }, "stepMm must be"],
    [{ conditions: { tool: "laser" } }, "tool must be"],
    [{ conditions: null }, "conditions must be"],
    [{ conditions: { tool: "short-rule", ruleLengthMm: 1e-300 } }, "ruleLengthMm must be"],
    [{ dimension: "leg-length" }, "must be"],
  ])("refuses %j", (change, message) => {
    const attempt = () => anticipateUncertainty({ ...three, ...change } as Anticipation);
    expect(attempt).toThrow(InvalidArgumentError);
    expect(attempt).toThrow(message);
  });
});

describe("anticipateUnchecked", () => {
  test.each([
    three,
    { ...three, count: 1, stepMm: 10, conditions: {} },
    { ...three, dimension: "hip-belt-girth", lengthMm: 910, conditions: { measuredBy: "helper" } },
    { ...three, conditions: { tool: "short-rule", ruleLengthMm: 200, landmarksFoundAfresh: true } },
  ] as const)("is what anticipateUncertainty gives for %j", (readings) => {
    expect(anticipateUnchecked(readings)).toBe(anticipateUncertainty(readings));
  });

  test.each([
    [{ tool: "laser" }, "tool must be one of tape, cord-and-ruler, short-rule, but received laser"],
    [{ measuredBy: "toString" }, "measuredBy must be one of self, helper, but received toString"],
  ])("refuses %j by name, for it would have no figures", (conditions, message) => {
    const attempt = () => anticipateUnchecked({ ...three, conditions } as unknown as Anticipation);
    expect(attempt).toThrow(InvalidArgumentError);
    expect(attempt).toThrow(message);
  });
});
