import { lendingTable } from "@tapewise/afterwards";
import { parseChart } from "@tapewise/charts";
import { type Recommendation, recommend } from "@tapewise/fit";
import { parseEstimate } from "@tapewise/measurement";
import { unwrap } from "@tapewise/outcome";
import { parseLength } from "@tapewise/units";
import { expect, test } from "vitest";

const doily = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Doily 45" });
const doublet = parseChart("size,torso-length (cm)\nM,40-46\n", { chart: "Doublet 30" });
const error = { biasMm: 5, repeatMm: 0, resolutionMm: 0 };
const torso = parseEstimate({ dimension: "torso-length", readings: [parseLength("44 cm")], error });
const [ofDoily, ofDoublet]: readonly Recommendation[] = [doily, doublet].map((chart) =>
  unwrap(recommend({ estimates: [torso] }, chart, { unit: "cm" })),
);
const shelf = [
  { chart: "Doublet 30", size: "M", count: 2 },
  { chart: "Doily 45", size: "M", count: 0 },
];

test("each size on the shelf has the probability and the misfit of its own chart", () => {
  if (ofDoily === undefined || ofDoublet === undefined) throw new Error("nothing was recommended");
  const outcome = lendingTable([{ member: "ana", recommendations: [ofDoily, ofDoublet] }], shelf);
  expect(outcome.issues).toEqual([]);
  const [doubletM, doilyM] = [ofDoublet.sizes[0], ofDoily.sizes[1]];
  expect(unwrap(outcome)).toEqual({
    members: ["ana"],
    shelf: [
      { pack: "Doublet 30, M", count: 2 },
      { pack: "Doily 45, M", count: 0 },
    ],
    chances: [[doubletM?.probability, doilyM?.probability]],
    misfitsMm: [[doubletM?.expectedMisfitMm, doilyM?.expectedMisfitMm]],
  });
});

test("a size that nobody was held against is not lent, and the outcome says so", () => {
  if (ofDoily === undefined) throw new Error("nothing was recommended");
  const outcome = lendingTable([{ member: "ana", recommendations: [ofDoily] }], shelf);
  expect(unwrap(outcome).chances[0]?.[0]).toBe(0);
  expect(outcome.issues.map(({ code, received, facts }) => [code, received, facts.member])).toEqual([
    ["lending-size-not-judged", "Doublet 30, M", "ana"],
  ]);
});

test("two recommendations of one chart for one member are an issue: it cannot be told which of them the shelf means", () => {
  if (ofDoily === undefined || ofDoublet === undefined) throw new Error("nothing was recommended");
  const outcome = lendingTable(
    [
      { member: "ben", recommendations: [ofDoily] },
      { member: "ana", recommendations: [ofDoily, ofDoublet, ofDoily] },
    ],
    shelf,
  );
  expect(outcome.ok).toBe(false);
  expect(
    outcome.issues.map(({ code, received, path, facts }) => [code, received, path, facts.member]),
  ).toEqual([["lending-chart-repeated", "Doily 45", ["members", 1, "recommendations", 2], "ana"]]);
});
