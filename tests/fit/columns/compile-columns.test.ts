import { defaultPolicy, type KnownOfPeople, safeCompileColumns } from "@tapewise/fit";
import { InvalidArgumentError, unwrap } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";
import { beltOf, chartOf, sizeOf, torsoChart } from "../cases.ts";

const torso = torsoChart({ S: [380, 430], M: [420, 480] });
const both = chartOf([
  sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [700, 980] }),
  sizeOf("M", { "torso-length": [420, 480] }),
  sizeOf("Spare", { "hip-belt-girth": [700, 980] }),
]);

function codesOf(chart: typeof torso, known: KnownOfPeople): readonly string[] {
  const outcome = safeCompileColumns(chart, known);
  return outcome.ok ? [] : outcome.issues.map(({ code }) => code);
}

describe("a plan", () => {
  test("holds the sizes in the order of the chart, and sizes that cannot be judged apart", () => {
    const plan = unwrap(safeCompileColumns(both, { read: ["hip-belt-girth", "torso-length"] }));
    expect(plan.sizes).toEqual(["S", "M"]);
    expect(plan.unjudgedSizes).toEqual(["Spare"]);
    expect(plan.dimensions).toEqual(["torso-length", "hip-belt-girth"]);
    expect(plan.beliefs).toEqual(["torso-length", "hip-belt-girth"]);
    expect(plan.policy).toEqual(defaultPolicy);
  });

  test("tells beforehand what follows from the chart and the pick alone", () => {
    const plan = unwrap(safeCompileColumns(both, { read: ["torso-length", "hip-belt-girth"] }));
    // M states no hip belt; S states all that was read.
    expect(plan.standingReasons).toEqual([[], ["dimension-not-stated"]]);
    const less = unwrap(safeCompileColumns(both, { read: ["torso-length"] }));
    expect(less.standingReasons[0]).toContain("dimension-not-read");
  });

  test("knows every end once, and where it bounds a size", () => {
    const { ends, lower, upper, starts } = unwrap(
      safeCompileColumns(torsoChart({ S: [380, 430], M: [430, 480] }), { read: ["torso-length"] }),
    ).tables;
    expect([...ends]).toEqual([Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 380, 430, 480]);
    expect([...starts]).toEqual([2, 5]);
    expect([[...lower], [...upper]]).toEqual([
      [2, 3],
      [3, 4],
    ]);
  });

  test("takes the policy that it is given, and none that is out of bounds", () => {
    const policy = { ...defaultPolicy, tieLoss: 0.1 };
    expect(unwrap(safeCompileColumns(torso, { read: ["torso-length"], policy })).policy).toEqual(policy);
    const wrong = { ...defaultPolicy, fitProbability: 2 };
    expect(() => safeCompileColumns(torso, { read: ["torso-length"], policy: wrong })).toThrow(
      InvalidArgumentError,
    );
  });
});

describe("charts and people that columns do not hold", () => {
  test("hip belts that are picked by themselves", () => {
    const apart = chartOf(torso.sizes, {
      swappable: ["hip-belt"],
      belts: [
        beltOf("one", { "hip-belt-girth": [700, 900] }),
        beltOf("two", { "hip-belt-girth": [880, 1100] }),
      ],
    });
    expect(codesOf(apart, { read: ["torso-length", "hip-belt-girth"] })).toEqual(["columns-belts-apart"]);
    // Where no girth was read, no belt is picked.
    expect(codesOf(apart, { read: ["torso-length"] })).toEqual([]);
  });

  test("two dimensions that a prior speaks of, and not one", () => {
    const read = ["torso-length", "hip-belt-girth"] as const;
    expect(codesOf(both, { read, prior: read })).toEqual(["columns-beliefs-joint"]);
    expect(codesOf(both, { read, prior: ["torso-length"] })).toEqual([]);
  });

  test("a hip girth that may be either", () => {
    const hip = chartOf([
      sizeOf("S", { "torso-length": [380, 430], "unstated-hip-girth": [700, 900] }),
      sizeOf("M", { "torso-length": [420, 480], "unstated-hip-girth": [800, 1000] }),
    ]);
    const read = ["torso-length", "hip-belt-girth", "hip-girth"] as const;
    expect(codesOf(hip, { read })).toEqual(["columns-girth-unclear"]);
    expect(codesOf(hip, { read: ["torso-length", "hip-belt-girth"] })).toEqual([]);
  });

  test("nothing that was read is in the chart", () => {
    expect(safeCompileColumns(torso, { read: ["stature"] }).ok).toBe(false);
  });
});
