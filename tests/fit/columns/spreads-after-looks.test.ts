import { defaultPolicy, formBeliefs, type Person, spreadsAfterLooks } from "@tapewise/fit";
import { anticipateUncertainty } from "@tapewise/measurement";
import { describe, expect, test } from "vitest";
import { estimateOf, priorOf, usualEstimate } from "../cases.ts";

function spreads(person: Person, most: number = defaultPolicy.mostFurtherReadings): readonly number[] {
  const belief = formBeliefs(person.estimates, person.prior).of("torso-length");
  if (belief === undefined) throw new Error("nothing is known of the torso");
  return spreadsAfterLooks(belief, { ...defaultPolicy, mostFurtherReadings: most });
}

/** Two pieces of independent knowledge: their precisions add. */
const together = (a: number, b: number) => 1 / Math.sqrt(1 / a ** 2 + 1 / b ** 2);

describe("readings whose error was stated", () => {
  const error = { biasMm: 3, repeatMm: 4, resolutionMm: 0 };
  const two = { estimates: [estimateOf("torso-length", ["44 cm", "44 cm"], error)] };

  test("further ones share the part that differs, and a helper's are not foreseen", () => {
    // 3² stays, 4² is shared by 3, 4 and 5 readings; a look that is not open leaves 3² + 4²/2.
    const expected = [9 + 16 / 3, 9 + 16 / 4, 9 + 16 / 5, 9 + 16 / 2].map(Math.sqrt);
    const found = spreads(two);
    expect(found).toHaveLength(4);
    expected.forEach((mm, look) => {
      expect(found[look]).toBeCloseTo(mm, 12);
    });
  });

  test("there are as many looks as the policy allows, and one more", () => {
    expect(spreads(two, 1)).toHaveLength(2);
    expect(spreads(two, 5)).toHaveLength(6);
  });

  test("with no further reading all stays as it is", () => {
    expect(spreads(two, 0)).toEqual([expect.closeTo(Math.sqrt(17), 12)]);
  });
});

describe("readings whose error is that of the tables", () => {
  test("a helper's readings add to one's own", () => {
    const own = usualEstimate("torso-length", ["440 mm"], { measuredBy: "self", tool: "tape" });
    const fresh = anticipateUncertainty({
      dimension: "torso-length",
      lengthMm: 440,
      count: 3,
      stepMm: own.readings[0]?.stepMm ?? 0,
      conditions: { tool: "tape", measuredBy: "helper" },
    });
    expect(spreads({ estimates: [own] })[3]).toBeCloseTo(together(own.uncertaintyMm, fresh), 12);
  });

  test("who has a helper already is offered no other", () => {
    const own = usualEstimate("torso-length", ["440 mm"], { measuredBy: "helper", tool: "tape" });
    const found = spreads({ estimates: [own] });
    expect(found[3]).toBe(own.uncertaintyMm);
    expect(found[0]).toBeLessThan(own.uncertaintyMm);
  });
});

test("where a prior alone speaks, the first look is a first measurement, and there is no other", () => {
  const prior = priorOf({ "torso-length": [440, 25] });
  const fresh = anticipateUncertainty({
    dimension: "torso-length",
    lengthMm: 440,
    count: 3,
    stepMm: 1,
    conditions: { tool: "tape", measuredBy: "self" },
  });
  const [first, ...others] = spreads({ estimates: [], prior });
  expect(first).toBeCloseTo(together(25, fresh), 12);
  expect(others).toEqual([25, 25, 25]);
});
