import {
  type Anticipation,
  anticipateUncertainty,
  compareNextWays,
  type ErrorDefaults,
  errorDefaults,
} from "@tapewise/measurement";
import { describe, expect, test } from "vitest";

const soFar: Anticipation = {
  dimension: "torso-length",
  lengthMm: 430,
  count: 3,
  stepMm: 1,
  conditions: { tool: "tape", measuredBy: "self" },
};

/** Only what is told is left of the error: figures that can be added up by hand. */
function onlyHands(self: number, helper: number): ErrorDefaults {
  const hand = (lastingMm: number) => ({ handlingMm: 0, findingMm: 0, lastingMm });
  const tool = { scaleHalfWidth: 0, transferMm: 0, jointMm: 0 };
  return {
    ...errorDefaults,
    hands: {
      ...errorDefaults.hands,
      "length along the body": { self: hand(self), helper: hand(helper) },
    },
    tools: { tape: tool, "cord-and-ruler": tool, "short-rule": tool },
  };
}

describe("compareNextWays", () => {
  test("starts from the uncertainty of the readings so far", () => {
    expect(compareNextWays(soFar, 3).nowMm).toBe(anticipateUncertainty(soFar));
  });

  test("repeating is worth as much as so many readings to begin with", () => {
    const repeat = compareNextWays(soFar, 3).ways.find(({ way }) => way === "repeat");
    expect(repeat?.uncertaintyMm).toBe(anticipateUncertainty({ ...soFar, count: 6 }));
    expect(repeat?.sameAsReadings).toBe(6);
  });

  test("a habit does not average out by oneself, and is halved in square by an equal helper", () => {
    const { nowMm, ways } = compareNextWays({ ...soFar, stepMm: 0, defaults: onlyHands(8, 8) }, 3);
    expect(nowMm).toBe(8);
    const [best, ...others] = ways;
    // Two independent results with u = 8: 8/√2.
    expect([best?.way, best?.uncertaintyMm]).toEqual(["helper", Math.sqrt(32)]);
    for (const other of others) expect(other.uncertaintyMm).toBe(8);
  });

  test("the weights are the best ones: 6 and 8 make 4.8", () => {
    // 36 · 64 / 100 = 4.8²
    const { ways } = compareNextWays({ ...soFar, stepMm: 0, defaults: onlyHands(8, 6) }, 1);
    expect(ways[0]?.uncertaintyMm).toBeCloseTo(4.8, 12);
    expect(ways[0]?.gainShare).toBeCloseTo(0.4, 12);
  });

  test("no number of readings of one's own does what a helper does", () => {
    const helper = compareNextWays(soFar, 3).ways[0];
    expect(helper?.way).toBe("helper");
    expect(helper).not.toHaveProperty("sameAsReadings");
  });

  test("offers only what is not done already", () => {
    const conditions = { tool: "short-rule", measuredBy: "helper", landmarksFoundAfresh: true } as const;
    const { ways } = compareNextWays({ ...soFar, conditions }, 2);
    expect(ways.map(({ way, tool }) => `${way} ${tool}`).sort()).toEqual([
      "other-tool cord-and-ruler",
      "other-tool tape",
      "repeat short-rule",
    ]);
  });

  test("another tool between the same marks keeps the slip in finding them", () => {
    const findingMm = 5;
    const base = onlyHands(0, 0);
    const hand = { handlingMm: 0, findingMm, lastingMm: 0 };
    const hands = { ...base.hands, "length along the body": { self: hand, helper: hand } };
    const { ways } = compareNextWays({ ...soFar, stepMm: 0, defaults: { ...base, hands } }, 4);
    const byWay = new Map(ways.map((row) => [row.way, row.uncertaintyMm]));
    expect(byWay.get("other-tool")).toBe(5);
    expect(byWay.get("repeat")).toBe(5);
    // One old finding and four new ones: 25 · 6.25 / 31.25 = 5.
    expect(byWay.get("landmarks-afresh")).toBeCloseTo(Math.sqrt(5), 12);
  });

  test("exact readings stay exact", () => {
    const { nowMm, ways } = compareNextWays({ ...soFar, stepMm: 0, defaults: onlyHands(0, 0) }, 1);
    expect(nowMm).toBe(0);
    expect(ways.map(({ uncertaintyMm, gainShare }) => [uncertaintyMm, gainShare])).toEqual(
      ways.map(() => [0, 0]),
    );
  });

  test.each([
    [{ ...soFar, count: 0 }, 3, "count"],
    [soFar, 0, "further"],
    [{ ...soFar, lengthMm: -1 }, 3, "lengthMm"],
    [{ ...soFar, stepMm: Number.NaN }, 3, "stepMm"],
  ])("refuses %o and %i more", (anticipation, further, argument) => {
    expect(() => compareNextWays(anticipation, further)).toThrow(`${argument} must be`);
  });
});
