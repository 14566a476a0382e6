import { dimension, dimensionIds, landmarkIds, landmarks } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

const guides = dimensionIds.map(dimension);

describe("landmarks", () => {
  test("there are at least fourteen, each once, in step with their ids", () => {
    expect(landmarks.length).toBeGreaterThanOrEqual(14);
    expect(landmarks.map((entry) => entry.id).toSorted()).toEqual([...landmarkIds].toSorted());
    expect(new Set(landmarkIds).size).toBe(landmarkIds.length);
  });

  test.each(landmarks)("$id never names itself as its neighbour, nor one neighbour twice", (entry) => {
    const neighbours = entry.confusions.flatMap((confusion) => confusion.landmark ?? []);
    expect(neighbours).not.toContain(entry.id);
    expect(new Set(neighbours).size).toBe(neighbours.length);
  });

  test("every end of a dimension that can be felt says what it is mistaken for, and what that does", () => {
    const used = new Set(guides.flatMap((guide) => guide.landmarks));
    for (const entry of landmarks.filter(({ id }) => used.has(id))) {
      expect(entry.confusions.length, entry.id).toBeGreaterThan(0);
    }
  });

  test("the edge of the ribs climbs in the direction in which it is followed", () => {
    // Anatomy: from the tenth rib the costal margin rises forwards to the breastbone.
    const check = landmarks.find(({ id }) => id === "lowest-rib")?.check.join(" ") ?? "";
    expect(check).toMatch(/forwards it climbs/);
    expect(check).not.toMatch(/backwards: it climbs/);
  });

  test("a neighbour that lies lower makes a height smaller and a torso length larger", () => {
    // Only the direction is certain: heights fall from C6 over C7 to T1, torso lengths run down from C7.
    const shiftsOf = (id: string, neighbour: string) =>
      landmarks
        .find((entry) => entry.id === id)
        ?.confusions.find((confusion) => confusion.landmark === neighbour)
        ?.shifts.map(({ dimension, direction }) => `${direction} ${dimension}`);
    expect(shiftsOf("cervicale", "t1")).toEqual([
      "- torso-length",
      "- cervicale-height",
      "- back-waist-length",
    ]);
    expect(shiftsOf("cervicale", "c6")).toEqual([
      "+ torso-length",
      "+ cervicale-height",
      "+ back-waist-length",
    ]);
    expect(shiftsOf("iliocristale", "iliospinale")).toContain("+ torso-length");
    expect(shiftsOf("iliocristale", "iliospinale")).toContain("- iliac-crest-height");
    expect(shiftsOf("iliocristale", "lowest-rib")).toEqual(["- torso-length", "+ iliac-crest-height"]);
  });
});
