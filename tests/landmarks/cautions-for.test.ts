import { cautionsFor, type DimensionId, dimensionIds } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const codesFor = (id: DimensionId): readonly string[] => cautionsFor(id).map((caution) => caution.code);

describe("cautionsFor", () => {
  test("the torso length has every caution there is, asking first", () => {
    expect(codesFor("torso-length")).toEqual([
      "ask-first",
      "neck-movement",
      "pain-or-numbness",
      "injury-or-surgery",
      "pregnancy",
      "growing-child",
      "heavy-load",
    ]);
  });

  test("what no neck is moved for has no caution about it", () => {
    expect(codesFor("hip-belt-girth")).not.toContain("neck-movement");
  });

  test("a pregnancy is remembered with every girth of the trunk", () => {
    for (const id of [
      "hip-belt-girth",
      "hip-girth",
      "waist-girth",
      "chest-girth",
      "underbust-girth",
    ] as const) {
      expect(codesFor(id)).toContain("pregnancy");
    }
  });

  test.each(dimensionIds)("consent, injuries and children are remembered with %s", (id) => {
    expect(codesFor(id)).toEqual(expect.arrayContaining(["ask-first", "injury-or-surgery", "growing-child"]));
  });

  test("an unknown id is a programmer's mistake", () => {
    expect(() => cautionsFor("inseam" as DimensionId)).toThrow(InvalidArgumentError);
  });
});
