import { type Estimate, parseEstimate } from "@tapewise/measurement";
import { parseLength } from "@tapewise/units";
import { describe, expect, test } from "vitest";
import { torsoFromReadings } from "../../../packages/tapewise/src/person/torso-from-readings.ts";

const read = (dimension: Estimate["dimension"], text: string, biasMm = 3): Estimate =>
  parseEstimate({
    dimension,
    readings: [parseLength(text)],
    error: { biasMm, repeatMm: 0, resolutionMm: 0 },
  });
const cervicale = read("cervicale-height", "144 cm", 3);
const crest = read("iliac-crest-height", "101.5 cm", 4);

describe("torsoFromReadings", () => {
  test("stands in for a torso length that was not read, and warns that it is straight", () => {
    const outcome = torsoFromReadings([crest, cervicale]);
    // 1440 mm - 1015 mm, and the root of 3² + 4².
    expect(outcome.ok && outcome.value).toMatchObject({
      dimension: "torso-length",
      mm: 425,
      uncertaintyMm: 5,
      readings: [{ mm: 1440 }, { mm: 1015 }],
    });
    expect(outcome.issues).toMatchObject([
      { code: "torso-length-straight", severity: "warning", path: ["readings", "cervicale-height"] },
    ]);
  });

  test.each([
    ["the torso length was read", [cervicale, crest, read("torso-length", "44 cm")]],
    ["one height is missing", [cervicale]],
    ["the other height is missing", [crest]],
    ["nothing was read", []],
  ])("says nothing where %s", (_where, estimates) => {
    expect(torsoFromReadings(estimates)).toMatchObject({ ok: true, value: undefined, issues: [] });
  });

  test("heights in the wrong order are an issue", () => {
    const swapped = [read("cervicale-height", "101.5 cm"), read("iliac-crest-height", "144 cm")];
    const outcome = torsoFromReadings(swapped);
    expect(outcome.ok).toBe(false);
    expect(outcome.issues).toMatchObject([{ code: "torso-heights-reversed", severity: "error" }]);
  });
});
