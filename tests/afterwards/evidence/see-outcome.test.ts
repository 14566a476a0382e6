import { type OutcomeRow, safeSeeOutcome } from "@tapewise/afterwards";
import { expect, test } from "vitest";
import { gingham } from "./gingham.ts";

const row: OutcomeRow = {
  v: 1,
  at: "2026-05-04",
  product: { maker: "Gingham", chart: "Doily 45" },
  size: "M",
  outcome: "kept",
  estimates: {
    "torso-length": { mm: 455, uncertaintyMm: 6 },
    "hip-belt-girth": { mm: 900, uncertaintyMm: 12, degreesOfFreedom: 8 },
  },
};

test("a pack that was kept fits in every part that chart and row speak of", () => {
  const seen = safeSeeOutcome(row, gingham);
  const key = { maker: "Gingham", product: "Doily 45", side: "inside" };
  // The variance of Student's t with 8 degrees of freedom is 8/6 of its scale squared (Johnson, Kotz & Balakrishnan 1995, 28.2).
  expect(seen.ok && seen.value).toEqual([
    { ...key, dimension: "torso-length", fromMm: 430, toMm: 480, meanMm: 455, sdMm: 6 },
    {
      ...key,
      dimension: "hip-belt-girth",
      fromMm: 800,
      toMm: 1050,
      meanMm: 900,
      sdMm: 12 * Math.sqrt(8 / 6),
    },
  ]);
});

test.each([
  ["harness-too-long", "torso-length", "below"],
  ["harness-too-short", "torso-length", "above"],
  ["hip-belt-too-large", "hip-belt-girth", "below"],
  ["hip-belt-too-small", "hip-belt-girth", "above"],
] as const)("%s says that the %s lies %s the range, and nothing of the rest", (reason, dimension, side) => {
  const seen = safeSeeOutcome({ ...row, outcome: "exchanged", reason }, gingham);
  expect(seen.ok && seen.value.map((one) => [one.dimension, one.side])).toEqual([[dimension, side]]);
});

test.each(["uncomfortable", "not-about-fit", undefined] as const)("%s says nothing of a size", (reason) => {
  const exchanged = { ...row, outcome: "exchanged" as const };
  expect(safeSeeOutcome(reason === undefined ? exchanged : { ...exchanged, reason }, gingham)).toEqual({
    ok: true,
    value: [],
    issues: [],
  });
});

test("degrees of freedom so few that the variance is infinite count as twice the variance", () => {
  const estimates = { "torso-length": { mm: 455, uncertaintyMm: 6, degreesOfFreedom: 1.5 } };
  const seen = safeSeeOutcome({ ...row, estimates }, gingham);
  expect(seen.ok && seen.value[0]?.sdMm).toBe(6 * Math.SQRT2);
});

test("an open end stays open", () => {
  const seen = safeSeeOutcome({ ...row, size: "L" }, gingham);
  expect(seen.ok && [seen.value[0]?.fromMm, seen.value[0]?.toMm]).toEqual([480, Number.POSITIVE_INFINITY]);
});

test("a reason that chart and row cannot speak of is said to be of no use", () => {
  const estimates = { "torso-length": { mm: 455, uncertaintyMm: 6 } };
  const seen = safeSeeOutcome(
    { ...row, outcome: "exchanged", reason: "hip-belt-too-small", estimates },
    gingham,
  );
  expect([seen.ok && seen.value, seen.issues.map(({ code, severity }) => [code, severity])]).toEqual([
    [],
    [["evidence-not-usable", "warning"]],
  ]);
});

test("another chart, another maker and an unknown size are issues", () => {
  const codes = (other: Partial<OutcomeRow>) =>
    safeSeeOutcome({ ...row, ...other }, gingham).issues.map(({ code }) => code);
  expect(codes({ product: { maker: "Gingham", chart: "Doily 50" } })).toEqual(["evidence-chart-differs"]);
  expect(codes({ product: { chart: "Doily 45" } })).toEqual(["evidence-chart-differs"]);
  expect(codes({ size: "XS" })).toEqual(["evidence-size-unknown"]);
});
