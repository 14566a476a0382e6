import { createEvidence, expectedMove, learnProduct, withChartDoubt } from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";
import { compare, formBeliefs, type Person, recommend } from "@tapewise/fit";
import { parseEstimate } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { parseLength } from "@tapewise/units";
import { expect, test } from "vitest";
import { add, gingham, ofM } from "./gingham.ts";

const error = { biasMm: 6, repeatMm: 0, resolutionMm: 0 };
const read = (dimension: "torso-length" | "hip-girth" | "hip-belt-girth", text: string) =>
  parseEstimate({ dimension, readings: [parseLength(text)], error });
const person: Person = { estimates: [read("torso-length", "455 mm")] };
const sdOf = (
  seen: Pick<Person, "estimates" | "prior">,
  dimension: "torso-length" | "hip-girth" | "hip-belt-girth",
) => formBeliefs(seen.estimates, seen.prior).of(dimension)?.sdMm;

test("the variance of the offset, over both possibilities, is added to that of the length", () => {
  const evidence = createEvidence();
  add(evidence, ofM, 12);
  const { offsetSdMm } = expectedMove(
    learnProduct(evidence, { maker: "Gingham", product: "Doily 45" }, "torso-length"),
  );
  expect(sdOf(withChartDoubt(evidence)(person, gingham), "torso-length")).toBeCloseTo(
    Math.hypot(6, offsetSdMm),
    9,
  );
});

test("of two equal packs, the one whose chart outcomes speak for goes first, whatever they are called", () => {
  const evidence = createEvidence();
  add(evidence, ofM, 60);
  const other: SizeChart = { ...gingham, chart: "Accordion 55", maker: "Aspic" };
  const options = { unit: "cm", asSeenFrom: withChartDoubt(evidence) } as const;
  const names = (charts: readonly SizeChart[], from: typeof options | { unit: "cm" }) =>
    unwrap(compare(person, charts, from)).ranked.map(({ recommendation }) => recommendation.chart);
  // Without the doubt they are equal, and the names settle it.
  expect(names([gingham, other], { unit: "cm" })).toEqual(["Accordion 55", "Doily 45"]);
  expect(names([gingham, other], options)).toEqual(["Doily 45", "Accordion 55"]);
  expect(names([other, gingham], options)).toEqual(["Doily 45", "Accordion 55"]);
  const [known, unknown] = [gingham, other].map((chart) => unwrap(recommend(person, chart, options)));
  expect((known?.probability ?? 0) - (unknown?.probability ?? 1)).toBeGreaterThan(0.02);
});

test("a chart that says hip and not which doubts the girth that it is judged by, and no other", () => {
  const hips = parseChart("size,hip (cm)\nS,60-100\nM,100-140\n", { chart: "Teaspoon 35" });
  const seen = withChartDoubt(createEvidence())(
    { estimates: [read("hip-girth", "98 cm"), read("hip-belt-girth", "92 cm")] },
    hips,
  );
  expect(sdOf(seen, "hip-belt-girth")).toBeGreaterThan(20);
  expect(sdOf(seen, "hip-girth")).toBe(6);
  const widest = withChartDoubt(createEvidence())({ estimates: [read("hip-girth", "98 cm")] }, hips);
  expect(sdOf(widest, "hip-girth")).toBeGreaterThan(20);
  // What the chart does not state is not doubted for it.
  expect(sdOf(withChartDoubt(createEvidence())(person, hips), "torso-length")).toBe(6);
});
