import { type DimensionId, findDimension } from "@tapewise/landmarks";
import { describe, expect, test } from "vitest";

describe("findDimension knows what people and charts write", () => {
  test.each<[string, DimensionId]>([
    ["torso-length", "torso-length"],
    ["Torso", "torso-length"],
    ["TORSO LENGTH", "torso-length"],
    ["back length", "torso-length"],
    ["Back length (C7 to crest)", "torso-length"],
    ["hip belt", "hip-belt-girth"],
    ["Hipbelt girth", "hip-belt-girth"],
    ["hip_belt", "hip-belt-girth"],
    ["Hips (widest)", "hip-girth"],
    ["full hip", "hip-girth"],
    ["Seat", "hip-girth"],
    ["waist", "waist-girth"],
    ["Bust", "chest-girth"],
    ["chest/bust", "chest-girth"],
    ["Height", "stature"],
    ["C7 height", "cervicale-height"],
    ["nape to waist", "back-waist-length"],
    ["ｔｏｒｓｏ", "torso-length"],
  ])("%j is %s", (text, id) => {
    expect(findDimension(text)).toEqual({ kind: "match", id });
  });
});

describe("findDimension says when a word means several things", () => {
  test.each(["hip", "Hips", "HIP SIZE", "hip circumference", "hip(s)"])(
    "%j is either girth of the hips",
    (text) => {
      expect(findDimension(text)).toMatchObject({
        kind: "ambiguous",
        candidates: ["hip-belt-girth", "hip-girth"],
      });
    },
  );

  test("the explanation names the question to ask", () => {
    const hips = findDimension("hips");
    expect(hips.kind === "ambiguous" && hips.explanation).toMatch(/ask where the tape goes/);
  });

  test.each([
    ["shoulder width", ["shoulder-breadth", "bideltoid-breadth", "shoulder-length"]],
    ["belt", ["hip-belt-girth", "waist-girth"]],
    ["waist/hip", ["hip-belt-girth", "waist-girth", "hip-girth"]],
    ["back", ["torso-length", "back-waist-length", "interscye-breadth"]],
  ])("%j", (text, candidates) => {
    expect(findDimension(text)).toMatchObject({ kind: "ambiguous", candidates });
  });
});

describe("findDimension suggests what was meant", () => {
  test.each<[string, DimensionId]>([
    ["torso lenght", "torso-length"],
    ["length of the torso", "torso-length"],
    ["wiast", "waist-girth"],
    ["hpis", "hip-belt-girth"],
    ["heigth", "stature"],
    ["torso length (cm)", "torso-length"],
    ["chest girht", "chest-girth"],
    ["biacromal", "shoulder-breadth"],
    ["to waist nape", "back-waist-length"],
    ["girth crest iliac", "hip-belt-girth"],
  ])("%j: %s first", (text, first) => {
    const found = findDimension(text);
    expect(found.kind === "unknown" && found.suggestions[0]).toBe(first);
  });

  test("at most three, however many are alike", () => {
    const found = findDimension("circumference");
    expect(found.kind === "unknown" && found.suggestions.length).toBe(3);
  });

  test("a misspelt ambiguous word suggests all that it may mean", () => {
    expect(findDimension("hipps")).toEqual({ kind: "unknown", suggestions: ["hip-belt-girth", "hip-girth"] });
  });

  test.each(["capacity", "maker", "x", "", "   ", "-", "🎒", "42"])("nothing is like %j", (text) => {
    expect(findDimension(text)).toEqual({ kind: "unknown", suggestions: [] });
  });

  test("a very long text is answered at once and unknown", () => {
    const started = performance.now();
    expect(findDimension("torso length ".repeat(20_000)).kind).toBe("unknown");
    expect(performance.now() - started).toBeLessThan(2000);
  });
});
