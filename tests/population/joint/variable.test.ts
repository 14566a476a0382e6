import { dimensionIds } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { variableUnit } from "@tapewise/population";
import { describe, expect, test } from "vitest";

describe("variableUnit", () => {
  test("is mm for each dimension and kg for body mass", () => {
    expect(dimensionIds.map(variableUnit).every((unit) => unit === "mm")).toBe(true);
    expect(variableUnit("mass-kg")).toBe("kg");
  });

  test("refuses what is no variable", () => {
    // @ts-expect-error: no variable
    expect(() => variableUnit("mass")).toThrow(InvalidArgumentError);
  });
});
