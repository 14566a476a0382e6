import { fc, test } from "@fast-check/vitest";
import { dimensionIds, plausibleLimits, torsoFromHeights } from "@tapewise/landmarks";
import { unwrap } from "@tapewise/outcome";
import { millimetres } from "@tapewise/units";
import { describe, expect } from "vitest";

// Whole millimetres, so that sums and differences are exact.
const height = fc.integer({ min: 1, max: 3000 });

describe("torso length from two heights", () => {
  test.prop([height, height, fc.integer({ min: 0, max: 500 })])(
    "law: shoes cancel out: raising both heights alike changes nothing",
    (crest, torso, sole) => {
      const barefoot = torsoFromHeights(millimetres(crest + torso), millimetres(crest));
      const shod = torsoFromHeights(millimetres(crest + torso + sole), millimetres(crest + sole));
      expect(shod).toEqual(barefoot);
      expect(unwrap(barefoot)).toBe(torso);
    },
  );

  test.prop([height, height])("law: of two different heights exactly one order is accepted", (a, b) => {
    fc.pre(a !== b);
    const accepted = [
      torsoFromHeights(millimetres(a), millimetres(b)),
      torsoFromHeights(millimetres(b), millimetres(a)),
    ];
    expect(accepted.map((outcome) => outcome.ok).toSorted()).toEqual([false, true]);
  });

  test.prop([height, height, fc.integer({ min: 1, max: 100 })])(
    "law: a higher C7 makes a longer torso, a higher crest a shorter one, each by as much",
    (crest, torso, more) => {
      const c7 = crest + torso + more;
      const before = unwrap(torsoFromHeights(millimetres(c7), millimetres(crest)));
      expect(unwrap(torsoFromHeights(millimetres(c7 + more), millimetres(crest)))).toBe(before + more);
      expect(unwrap(torsoFromHeights(millimetres(c7), millimetres(crest + more)))).toBe(before - more);
    },
  );

  test.prop([
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
  ])(
    "law: two finite heights give a positive finite length with its warning, or an error and no length",
    (a, b) => {
      const outcome = torsoFromHeights(millimetres(a), millimetres(b));
      if (outcome.ok) {
        expect(outcome.value).toBeGreaterThan(0);
        expect(Number.isFinite(outcome.value)).toBe(true);
        expect(outcome.issues.map((issue) => issue.severity)).toEqual(["warning"]);
      } else {
        for (const issue of outcome.issues) expect(issue.severity).toBe("error");
      }
    },
  );
});

describe("plausible limits", () => {
  test.prop([fc.constantFrom(...dimensionIds)])(
    "law: what is plausible for an adult is plausible for a child too, since children grow up",
    (id) => {
      const adult = plausibleLimits(id, "adult");
      const child = plausibleLimits(id, "child");
      expect(child.from).toBeLessThanOrEqual(adult.from);
      expect(child.to).toBeGreaterThanOrEqual(adult.to);
      expect(child.from).toBeGreaterThan(0);
    },
  );

  test.prop([fc.constantFrom(...dimensionIds), fc.constantFrom("adult" as const, "child" as const)])(
    "law: limits are closed, in order, and whole centimetres",
    (id, group) => {
      const { from, to, fromClosed, toClosed } = plausibleLimits(id, group);
      expect(from).toBeLessThan(to);
      expect(fromClosed && toClosed).toBe(true);
      expect(from % 10).toBe(0);
      expect(to % 10).toBe(0);
    },
  );
});
