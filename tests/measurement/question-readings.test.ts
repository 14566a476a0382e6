import { type EstimateInput, errorDefaults, safeEstimate } from "@tapewise/measurement";
import { formatIssue } from "@tapewise/outcome";
import { createRandom } from "@tapewise/statistics";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { questionsOf, readingsOf } from "./readings.ts";

const codesOf = (texts: string, input: Partial<EstimateInput> = {}) =>
  safeEstimate({ dimension: "torso-length", readings: readingsOf(texts), ...input }).issues.map(
    ({ code }) => code,
  );

describe("questions about readings", () => {
  test.each([
    "43.2 cm, 43.9 cm, 43.5 cm",
    "17 in, 17 1/2 in, 17 1/4 in",
    "17 in, 17 in, 18 in",
    "43 cm, 44 cm, 43 cm",
    "43.2 cm, 43.9 cm",
  ])("good readings raise none: %s", (texts) => {
    expect(codesOf(texts)).toEqual([]);
  });

  test.each([
    ["self", 1, "mm"],
    ["self", 10, "cm"],
    ["self", 25.4, "in"],
    ["helper", 1, "mm"],
    ["helper", 5, "mm"],
    ["helper", 10, "cm"],
    ["helper", 25.4, "in"],
  ] as const)(
    "fewer than one in 25 triples that are as they should be raise any: %s, to %f %s",
    (measuredBy, step, unit) => {
      const random = createRandom(61).fork(measuredBy).fork(`${step}`);
      const { handlingMm } = errorDefaults.hands["length along the body"][measuredBy];
      const conditions = { tool: "tape", measuredBy, landmarksFoundAfresh: false } as const;
      const trials = 2000;
      let asked = 0;
      for (let i = 0; i < trials; i += 1) {
        const length = 400 + 100 * random.uniform();
        const readings = [1, 2, 3].map(() => {
          const mm = millimetres(step * Math.round((length + handlingMm * random.normal()) / step));
          return { mm, stepMm: millimetres(step), unit, text: `${mm} mm` };
        });
        const outcome = safeEstimate({ dimension: "torso-length", readings, conditions });
        if (outcome.issues.length > 0) asked += 1;
      }
      expect(asked / trials).toBeLessThan(1 / 25);
    },
  );

  test("leave room for bones found afresh while nobody says whether they were", () => {
    // One scatter of handling is 6 mm, with finding √(36 + 25) = 7.81 mm; 27 mm apart is s = 19.1 mm.
    const codes = (conditions: EstimateInput["conditions"]) =>
      codesOf("43.1 cm, 45.8 cm", conditions === undefined ? {} : { conditions });
    // (19.1/6)² = 10.1 is beyond 6.635, the 1 % point of χ² with one degree of freedom; (19.1/7.81)² = 5.98 is not.
    expect(codes({ landmarksFoundAfresh: false })).toEqual(["readings-scatter"]);
    expect(codes({ landmarksFoundAfresh: true })).toEqual([]);
    expect(codes(undefined)).toEqual([]);
    // Readings that agree are judged by the smaller scatter: a helper's 4 mm, and not √(16 + 9) = 5 mm.
    // Step 1/16 in: (1.5875/(4 √(2π)))² / √3 = 0.0145, with 5 mm 0.0093.
    const same = "17 1/16 in, 17 1/16 in, 17 1/16 in";
    expect(codesOf(same, { conditions: { measuredBy: "helper" } })).toEqual([]);
    const afresh = { measuredBy: "helper", landmarksFoundAfresh: true } as const;
    expect(codesOf(same, { conditions: afresh })).toEqual(["readings-too-alike"]);
  });

  test("a reading alone is asked about", () => {
    expect(questionsOf("reading-alone", "43.2 cm", { path: ["torso"] }).map(formatIssue)).toEqual([
      "torso: warning: there is only one reading of the torso length, so a slip in it would not show " +
        "(expected three readings, the bones found anew each time) [reading-alone]",
    ]);
    expect(codesOf("43.2 cm, 43.9 cm")).not.toContain("reading-alone");
  });

  test("several are asked at once, in a fixed order", () => {
    expect(codesOf("17 in, 43.2 cm, 170 cm")).toEqual([
      "readings-mixed-units",
      "reading-implausible",
      "reading-apart",
    ]);
    expect(codesOf("43 cm, 44 cm, 45 cm, 46 cm")).toEqual(["readings-drift"]);
  });

  test("all of them are warnings with a text that has no empty place", () => {
    const outcome = safeEstimate({
      dimension: "hip-belt-girth",
      readings: readingsOf("90.0 cm, 95.0 cm, 100.0 cm, 105.0 cm, 40 in, 36 cm, 3 cm"),
    });
    expect(outcome.issues.length).toBeGreaterThanOrEqual(4);
    for (const issue of outcome.issues) {
      expect(issue.severity).toBe("warning");
      expect(formatIssue(issue)).not.toMatch(/[{}]|undefined|NaN/);
    }
  });
});
