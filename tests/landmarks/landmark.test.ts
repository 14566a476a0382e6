import { type LandmarkId, landmark, landmarkIds } from "@tapewise/landmarks";
import { InvalidArgumentError } from "@tapewise/outcome";
import { describe, expect, test } from "vitest";

describe("landmark", () => {
  test.each(landmarkIds)("knows %s", (id) => {
    expect(landmark(id).id).toBe(id);
  });

  test("C7 is told from both its neighbours by moving the head, and not by the largest bump alone", () => {
    const { find, check, confusions } = landmark("cervicale");
    expect(find.join(" ")).toMatch(/tip slowly backwards.*slide forward and vanish.*stays: that one is C7/);
    expect(check.join(" ")).toMatch(/turn slowly from side to side.*T1 hardly at all/);
    expect(check.join(" ")).toMatch(/Do not go by the largest bump alone/);
    expect(confusions.map((confusion) => confusion.landmark)).toEqual(["t1", "c6"]);
  });

  test.each(["elbow", "toString", ""])("refuses %j as a programmer's mistake", (id) => {
    expect(() => landmark(id as LandmarkId)).toThrow(InvalidArgumentError);
  });
});
