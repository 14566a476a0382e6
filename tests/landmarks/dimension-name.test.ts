import { type DimensionId, dimension, dimensionIds, dimensionName } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { expect, test } from "vitest";

test.each(dimensionIds)("%s is called what its guide calls it", (id) => {
  expect(dimensionName(id)).toBe(dimension(id).name);
});

test("an unknown id is a programmer's mistake, and the message shows it", () => {
  expect(() => dimensionName("inseam" as DimensionId)).toThrow(InvalidArgumentError);
  expect(() => dimensionName("inseam" as DimensionId)).toThrow("inseam");
});
