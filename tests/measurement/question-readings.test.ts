import { type EstimateInput, safeEstimate } from "@tapewise/measurement";
import { formatIssue } from "@tapewise/outcome";
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
