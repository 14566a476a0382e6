import type { Conditions, Estimate } from "@tapewise/measurement";
import { expect, test } from "vitest";
import { answer, find, torsoChart, usualEstimate } from "./cases.ts";

const touching = torsoChart({ S: [380, 430], M: [430, 490] });
const estimate: Estimate = usualEstimate(
  "torso-length",
  ["43.1 cm", "43.3 cm", "43.2 cm", "43.1 cm", "43.2 cm", "43.2 cm"],
  { tool: "short-rule", measuredBy: "self" },
);

/** What a helper is said to bring to somebody who is just as unsure and reads under these conditions. */
function gainOf(conditions: Conditions): number {
  const own: Estimate = { ...estimate, conditions: { ...estimate.conditions, ...conditions } };
  return Number(
    find(answer({ estimates: [own] }, touching).next, "measure-with-helper").facts.gainProbability,
  );
}

test("a helper reads with the rule that is at hand: a shorter one has more joints", () => {
  expect(gainOf({ ruleLengthMm: 20 })).toBeLessThan(gainOf({ ruleLengthMm: 600 }));
});

test("a helper who finds the bones afresh averages out the slip in finding them", () => {
  expect(gainOf({ landmarksFoundAfresh: true })).toBeGreaterThan(gainOf({ landmarksFoundAfresh: false }));
});
