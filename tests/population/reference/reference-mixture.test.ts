import { InvalidArgumentError } from "@tapewise/outcome";
import { referenceMixture, referencePopulation } from "@tapewise/population";
import { millimetres } from "@tapewise/units";
import { describe, expect, test } from "vitest";

describe("referenceMixture", () => {
  test("has the stated shares", () => {
    const crew = referenceMixture({ women: 3, men: 1 });
    expect(crew.parts.map(({ weight }) => weight)).toEqual([0.75, 0.25]);
    const [women, men] = [referencePopulation("women"), referencePopulation("men")].map(
      (model) => model.distribution("stature").mean,
    );
    expect(crew.distribution("stature").mean).toBeCloseTo(0.75 * (women ?? 0) + 0.25 * (men ?? 0), 9);
    expect(crew.about.label).toBe("adults of unknown sex");
    expect(crew.about.source).toContain("ANSUR II");
  });

  test("takes a tall person for a man rather than a woman, and a short one for a woman", () => {
    const both = referenceMixture({ women: 1, men: 1 });
    expect(both.conditional({ stature: millimetres(1850) }).parts[1]?.weight).toBeGreaterThan(0.99);
    expect(both.conditional({ stature: millimetres(1530) }).parts[0]?.weight).toBeGreaterThan(0.98);
  });

  test("refuses shares that are none", () => {
    expect(() => referenceMixture({ women: 0, men: 0 })).toThrow(InvalidArgumentError);
    expect(() => referenceMixture({ women: -1, men: 2 })).toThrow(InvalidArgumentError);
  });
});
