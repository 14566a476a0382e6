import { chartDimensions, speakDimension } from "@tapewise/charts";
import { expect, test } from "vitest";

test.each([
  ["torso-length", "torso length"],
  ["hip-belt-girth", "hip-belt girth"],
  ["unstated-hip-girth", "hip girth"],
] as const)("%s is read aloud as %s", (dimension, words) => {
  expect(speakDimension(dimension)).toBe(words);
});

test("nothing but a girth that a chart leaves open is read aloud like another dimension", () => {
  const spoken = chartDimensions.filter((id) => id !== "unstated-hip-girth").map(speakDimension);
  expect(new Set(spoken).size).toBe(spoken.length);
});
