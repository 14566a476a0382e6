import { describe, expect, test } from "vitest";
import { answer, chartOf, codes, find, sizeOf, sureEstimate } from "./cases.ts";

describe("two dimensions that ask for two sizes", () => {
  const pack = chartOf([
    sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [700, 800] }),
    sizeOf("M", { "torso-length": [430, 480], "hip-belt-girth": [810, 900] }),
  ]);
  const person = (torsoMm: number, beltMm: number, beltUncertaintyMm: number) => ({
    estimates: [
      sureEstimate("torso-length", torsoMm, 4),
      sureEstimate("hip-belt-girth", beltMm, beltUncertaintyMm),
    ],
  });

  test("are said to where no size takes both", () => {
    expect(find(answer(person(400, 850, 8), pack).reasons, "dimensions-disagree").sentence).toBe(
      "The hip-belt girth asks for M, the torso length for S, and no size takes both.",
    );
  });

  test("are not where the pick takes both and the girth is only unsure", () => {
    const narrow = chartOf([
      sizeOf("S", { "torso-length": [380, 430], "hip-belt-girth": [790, 810] }),
      sizeOf("M", { "torso-length": [430, 480], "hip-belt-girth": [700, 1000] }),
    ]);
    // Hips: 2 Φ(.25) − 1 = 0.1974 for S, whose range holds the mean all the same.
    const { pick, verdict, reasons } = answer(person(405, 800, 40), narrow);
    expect([pick, verdict]).toEqual(["S", "between-sizes"]);
    expect(codes(reasons)).not.toContain("dimensions-disagree");
    expect(find(reasons, "no-size-likely").facts.dimension).toBe("hip-belt-girth");
  });
});
