import type { Person } from "@tapewise/fit";
import { describe, expect, test } from "vitest";
import { answer, beltOf, chartOf, codes, estimateOf, sizeOf, sureEstimate } from "./cases.ts";

const chart = chartOf(
  [sizeOf("S", { "torso-length": [380, 440] }), sizeOf("M", { "torso-length": [430, 490] })],
  {
    belts: [
      beltOf("small", { "hip-belt-girth": [700, 880] }),
      beltOf("large", { "hip-belt-girth": [860, 1000] }),
    ],
  },
);

function verdictOf(...estimates: Person["estimates"]) {
  const { verdict, decidedBy } = answer({ estimates }, chart);
  return [verdict, decidedBy];
}

const torso = (mm: number) => sureEstimate("torso-length", mm, 5);
const belt = (mm: number) => sureEstimate("hip-belt-girth", mm, 8);

describe("the part of a pack that sets the verdict", () => {
  test("is the pack where both fit, where only the belt does, and where neither does", () => {
    expect(verdictOf(torso(400), belt(800))).toEqual(["fits", "pack"]);
    expect(verdictOf(torso(550), belt(800))).toEqual(["outside-the-range", "pack"]);
    expect(verdictOf(torso(550), belt(1100))).toEqual(["outside-the-range", "pack"]);
    expect(verdictOf(torso(400))).toEqual(["fits", "pack"]);
  });

  test("is the belt where the pack fits and no belt does", () => {
    expect(verdictOf(torso(400), belt(1100))).toEqual(["outside-the-range", "belt"]);
  });

  test("is the one to be measured again", () => {
    const error = { biasMm: 2, repeatMm: 12, resolutionMm: 5 };
    expect(verdictOf(torso(400), estimateOf("hip-belt-girth", ["87 cm"], error))).toEqual([
      "measure-again",
      "belt",
    ]);
    // 2000 mm around the hips is more than anybody has: 1910 mm (assumption of the landmarks package).
    expect(verdictOf(torso(400), belt(2000))).toEqual(["measure-again", "belt"]);
    expect(verdictOf(torso(650), belt(2000))).toEqual(["measure-again", "pack"]);
  });

  test("is the pack where no length is known that a harness is made to", () => {
    const girths = {
      ...chart,
      sizes: [sizeOf("S", { "torso-length": [380, 440], "chest-girth": [800, 900] })],
    };
    expect(answer({ estimates: [sureEstimate("chest-girth", 850, 8)] }, girths)).toMatchObject({
      verdict: "measure-again",
      decidedBy: "pack",
    });
  });
});

test("a belt is not to be swapped where the maker swaps none", () => {
  // The belts go by the waist, which was not read, so that the hips of the sizes bind nothing.
  const apart = chartOf([sizeOf("S", { "torso-length": [380, 440], "hip-belt-girth": [700, 880] })], {
    belts: [beltOf("small", { "waist-girth": [600, 780] })],
  });
  const { next } = answer({ estimates: [torso(400), belt(950)] }, apart);
  expect(codes(next)).not.toContain("swap-hip-belt");
  const swaps = { ...apart, belts: [], swappable: ["hip-belt"] as const };
  expect(codes(answer({ estimates: [torso(400), belt(950)] }, swaps).next)).toContain("swap-hip-belt");
});
