import { referencePrior } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { safeReadPerson } from "tapewise/batch";
import { describe, expect, test } from "vitest";
import { choosePrior } from "../../../packages/tapewise/src/person/choose-prior.ts";

// Surveyed statures: women 1435 to 1827 mm, men 1491 to 1980 mm (ANSUR II, Gordon et al. 2014; recomputed).
describe("a stature that nobody surveyed had", () => {
  test.each([
    ["women", 1434],
    ["women", 1828],
    ["men", 1490],
    ["men", 1981],
  ] as const)("of %s, %d mm: nothing is concluded from it unasked", (cut, mm) => {
    const outcome = choosePrior({ cut, stature: `${mm} mm`, readings: {} }, millimetres(mm), "automatic");
    expect(outcome.ok && outcome.value).toBeUndefined();
    expect(outcome.issues).toMatchObject([
      {
        code: "person-stature-not-surveyed",
        severity: "warning",
        path: ["stature"],
        received: `${mm} mm`,
      },
    ]);
    expect(outcome.issues[0]?.message).toMatch(/were not used.*growing child.*professional fitter/);
  });

  test("is used where the figures are asked for, with the same caution", () => {
    const line = { cut: "women", stature: "143.4 cm", readings: {} } as const;
    const outcome = choosePrior(line, millimetres(1434), "reference");
    expect(outcome.ok && outcome.value).toEqual(
      referencePrior({ cut: "women", statureMm: millimetres(1434) }),
    );
    expect(outcome.issues[0]?.message).toMatch(/say little here.*growing child.*professional fitter/);
  });

  test("is of no matter where nobody wants the figures", () => {
    expect(choosePrior({ cut: "women", readings: {} }, millimetres(1200), "none").issues).toEqual([]);
  });

  test.each([1435, 1827])("but %d mm a surveyed woman had", (mm) => {
    const outcome = choosePrior({ cut: "women", readings: {} }, millimetres(mm), "automatic");
    expect(outcome).toMatchObject({ ok: true, issues: [], value: { dimensions: expect.any(Array) } });
  });

  test("is told where it was read", () => {
    const readings = { "torso-length": ["35 cm", "36 cm"], stature: ["120 cm", "120.4 cm"] };
    const { issues } = safeReadPerson({ cut: "women", readings });
    expect(issues).toMatchObject([{ path: ["readings", "stature"], received: "1202 mm" }]);
  });
});
