import { cautionCodes, cautions, dimensionIds, landmarkIds } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

describe("cautions", () => {
  test("there is one for each code, and each says whom to ask", () => {
    expect(cautions.map((caution) => caution.code).toSorted()).toEqual([...cautionCodes].toSorted());
    for (const { code, ask } of cautions.filter(({ code }) => code !== "ask-first")) {
      expect(ask, code).toMatch(/professional fitter|clinician|doctor/);
    }
  });

  test("each is attached to dimensions, and to landmarks that exist", () => {
    for (const { dimensions, landmarks: touched } of cautions) {
      for (const id of dimensions) expect(dimensionIds).toContain(id);
      for (const id of touched) expect(landmarkIds).toContain(id);
      expect(new Set(dimensions).size).toBe(dimensions.length);
    }
  });
});
