import { InvalidArgumentError } from "@tapewise/outcome";
import { readSurvey, surveySample } from "@tapewise/population";
import { describe, expect, test } from "vitest";

const about = { label: "the crew", source: "the spring meeting", caveat: "" };
const text = "waist,hip,w\n82,98,1\n,101,2\n90,104,3\n";

describe("surveySample", () => {
  test("gives the values that are there, with their weights", () => {
    const dimensions = {
      "waist-girth": { column: "waist", unit: "cm" },
      "hip-girth": { column: "hip", unit: "cm" },
    } as const;
    const weighted = readSurvey(text, { about, dimensions, weight: "w" });
    expect(surveySample(weighted, "waist-girth")).toEqual({
      values: [820, 900],
      weights: [1, 3],
      readings: [[820], [900]],
      missing: 1,
    });
    const plain = surveySample(readSurvey(text, { about, dimensions }), "hip-girth");
    expect("weights" in plain).toBe(false);
    expect(plain.missing).toBe(0);
    expect(() => surveySample(weighted, "stature")).toThrow(InvalidArgumentError);
  });
});
