import { InvalidArgumentError } from "@tapewise/outcome";
import { referencePopulation } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

describe.each(["women", "men"] as const)("referencePopulation of %s", (cut) => {
  const model = referencePopulation(cut);

  test("has thirteen dimensions and body mass, with source and caveat", () => {
    expect(model.variables).toHaveLength(14);
    expect(model.variables[0]).toBe("torso-length");
    expect(model.variables).toContain("mass-kg");
    expect(model.about.label).toBe(cut);
    expect(model.about.source).toContain("NATICK/TR-15/007");
    expect(model.about.caveat).toContain("Soldiers");
    expect(model.about.caveat).toContain("straight");
    expect(model.about.caveat).toContain("navel");
  });

  test("knows that two heights make the torso", () => {
    const torso = model.conditional({
      "cervicale-height": millimetres(1450),
      "iliac-crest-height": millimetres(1030),
    });
    expect(torso.distribution("torso-length").mean).toBeCloseTo(420, 8);
    expect(torso.distribution("torso-length").sd).toBe(0);
  });

  test("takes its source along when asked about people of whom something is known", () => {
    const given = model.conditional({ stature: millimetres(1700) }).marginal(["torso-length"]);
    expect(given.about.source).toBe(model.about.source);
    expect(given.about.caveat).toBe(model.about.caveat);
  });
});

test("refuses other cuts", () => {
  // @ts-expect-error: the survey has women and men
  expect(() => referencePopulation("children")).toThrow(InvalidArgumentError);
});
