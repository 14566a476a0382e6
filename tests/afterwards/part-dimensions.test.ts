import { partDimensions, safeSeeOutcome } from "@tapewise/afterwards";
import { parseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { expect, test } from "vitest";

test("a part is judged by the first of its dimensions that chart and row speak of", () => {
  const chart = parseChart("size,torso-length (cm),stature (cm),waist (cm)\nM,42-48,165-180,70-95\n", {
    chart: "Doily 45",
  });
  const of = (...dimensions: readonly ("torso-length" | "stature" | "waist-girth")[]) => {
    const estimates = Object.fromEntries(
      dimensions.map((dimension) => [
        dimension,
        { mm: dimension === "stature" ? 1700 : 800, uncertaintyMm: 5 },
      ]),
    );
    const row = {
      v: 1,
      at: "2026-05-04",
      product: { chart: "Doily 45" },
      size: "M",
      outcome: "kept",
    } as const;
    return unwrap(safeSeeOutcome({ ...row, estimates }, chart)).map(({ dimension }) => dimension);
  };
  expect(of("stature", "torso-length", "waist-girth")).toEqual(["torso-length", "waist-girth"]);
  expect(of("stature")).toEqual(["stature"]);
  expect(partDimensions.harness.indexOf("torso-length")).toBe(0);
  // No dimension tells of both parts.
  expect(partDimensions.belt.filter((one) => partDimensions.harness.includes(one))).toEqual([]);
});
