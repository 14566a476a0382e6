import {
  type DimensionId,
  dimension,
  findDimension,
  landmark,
  type Slip,
  safeParseDimension,
  torsoFromHeights,
} from "@tapewise/landmarks";
import { millimetres } from "@tapewise/units";
import { describe, expect, expectTypeOf, test } from "vitest";

describe("misuse of landmarks does not compile", () => {
  test("heights without a unit, and names without a look-up, are refused by the type checker", () => {
    // @ts-expect-error a bare number has no unit
    torsoFromHeights(1440, 1015);
    // @ts-expect-error a text that a user wrote has to go through safeParseDimension
    expect(() => dimension("hips")).toThrow();
    // @ts-expect-error a dimension is not a landmark
    expect(() => landmark("torso-length")).toThrow();
    expect(torsoFromHeights(millimetres(1440), millimetres(1015)).ok).toBe(true);
  });

  test("a match has to be looked at before its id can be used", () => {
    const found = findDimension("torso");
    // @ts-expect-error an ambiguous or unknown name has no id
    const id: DimensionId = found.id;
    expect(id).toBe("torso-length");
    const parsed = safeParseDimension("torso");
    // @ts-expect-error a failure has no value
    expectTypeOf(parsed.value).toBeString();
    expect(parsed.ok).toBe(true);
  });

  test("a slip without a size, and data that is written to, are refused", () => {
    // @ts-expect-error a slip says how large it is and on what that rests
    const slip: Slip = { code: "a-slip", what: "A.", shows: "B.", detect: "C.", mend: "D." };
    expect(slip.code).toBe("a-slip");
    const torso = dimension("torso-length");
    const write = (): void => {
      // @ts-expect-error the guide is read only
      torso.slips[0].code = "mine";
    };
    expect(write).toBeTypeOf("function");
  });
});
