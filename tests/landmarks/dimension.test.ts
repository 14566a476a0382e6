import { type DimensionId, dimension, dimensionIds } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("dimension", () => {
  test.each(dimensionIds)("brings names and guide of %s together", (id) => {
    const found = dimension(id);
    expect(found.id).toBe(id);
    expect(found.synonyms.length).toBeGreaterThan(0);
    expect(found.ways.length).toBeGreaterThan(0);
  });

  test("tells the torso length from the standards' back length, which ends at the waist", () => {
    const { definition, standards } = dimension("torso-length");
    expect(definition).toMatch(/^The length from C7.* curve of the spine .* iliac crests\.$/);
    expect(standards.every((standard) => standard.differs !== undefined)).toBe(true);
  });

  test.each(["inseam", "constructor", "", "Torso-Length"])("refuses %j as a programmer's mistake", (id) => {
    expect(() => dimension(id as DimensionId)).toThrow(InvalidArgumentError);
  });
});
