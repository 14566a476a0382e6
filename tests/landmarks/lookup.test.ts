import {
  cautionsFor,
  type DimensionId,
  dimension,
  dimensionIds,
  dimensionName,
  type LandmarkId,
  landmark,
  landmarkIds,
} from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

const noDimension = "inseam" as DimensionId;
const noLandmark = "elbow" as LandmarkId;

describe("look-ups by id", () => {
  test.each(dimensionIds)("dimension, its name and its cautions: %s", (id) => {
    expect(dimension(id).id).toBe(id);
    expect(dimensionName(id)).toBe(dimension(id).name);
    expect(cautionsFor(id).every((caution) => caution.dimensions.includes(id))).toBe(true);
  });

  test.each(landmarkIds)("landmark: %s", (id) => {
    expect(landmark(id).id).toBe(id);
  });

  test("an unknown id is a programmer's mistake, and the message shows it", () => {
    for (const lookup of [dimension, dimensionName, cautionsFor]) {
      expect(() => lookup(noDimension)).toThrow(InvalidArgumentError);
      expect(() => lookup(noDimension)).toThrow("inseam");
    }
    expect(() => landmark(noLandmark)).toThrow(InvalidArgumentError);
    expect(() => landmark("toString" as LandmarkId)).toThrow(InvalidArgumentError);
    expect(() => dimension("constructor" as DimensionId)).toThrow(InvalidArgumentError);
  });
});

describe("cautionsFor", () => {
  test("the torso length has every caution there is", () => {
    expect(cautionsFor("torso-length").map((caution) => caution.code)).toEqual([
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
    expect(cautionsFor("hip-belt-girth").map((caution) => caution.code)).not.toContain("neck-movement");
  });

  test("children are remembered with every dimension", () => {
    for (const id of dimensionIds) {
      expect(cautionsFor(id).map((caution) => caution.code)).toContain("growing-child");
    }
  });
});
