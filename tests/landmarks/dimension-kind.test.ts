import { type DimensionId, dimension, dimensionIds, dimensionKind } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

test.each(dimensionIds)("%s has the kind that its guide states", (id) => {
  expect(dimensionKind(id)).toBe(dimension(id).kind);
});

test("an unknown dimension is a programmer's mistake", () => {
  for (const id of ["arm-span", "sitting-height", "head-girth"]) {
    expect(() => dimensionKind(id as DimensionId)).toThrow(InvalidArgumentError);
  }
});
