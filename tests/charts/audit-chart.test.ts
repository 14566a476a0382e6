import { auditChart, auditChartText, auditReport, chartsIssues } from "@tapewise/charts";
import { formatIssue } from "@tapewise/outcome";
import { expect, test } from "vitest";
import { codes, read } from "./charts-in-tests.ts";

/** A chart with everything that can be odd about one. */
const odd = read(`size,torso (cm),hips (cm),hip belt (cm),waist (cm),capacity (L)
XS,15-17,70-90,60-70,60-70,30
S,38-43,90-98,80-90,70-95,40
M,46,<104,80-90,80-95,39
L,48-70,97+,82-88,100-100.5,45
XL,49-70,130+,89-95,99-99.5,46
XXL,,,,,
`).chart;

test("every finding becomes a warning in its own words, without a place left open", () => {
  const issues = auditChart(odd);
  expect(codes(issues)).toEqual(auditReport(odd).map(({ kind }) => `chart-${kind}`));
  for (const issue of issues) {
    expect(issue.severity).toBe("warning");
    expect(formatIssue(issue)).not.toMatch(/[{}]|undefined|NaN|Infinity/);
    expect(Object.keys(chartsIssues)).toContain(issue.code);
    for (const fact of Object.values(issue.facts)) {
      if (typeof fact === "number") expect(Number.isFinite(fact)).toBe(true);
    }
  }
});

test("this chart has one of almost each kind", () => {
  expect([...new Set(codes(auditChart(odd)))].sort()).toEqual([
    "chart-capacity-falls",
    "chart-end-open-inside",
    "chart-gap",
    "chart-gap-of-writing",
    "chart-girth-unstated",
    "chart-interval-inferred",
    "chart-length-implausible",
    "chart-length-suspicious",
    "chart-overlap",
    "chart-range-narrow",
    "chart-ranges-equal",
    "chart-size-inside",
    "chart-size-without-dimension",
    "chart-sizes-out-of-order",
  ]);
});

test("paths and facts name size and dimension, and received shows the chart's own words", () => {
  const issue = auditChart(read("size,torso (cm)\nS,38-43\nM,45-50").chart)[0];
  expect(issue).toMatchObject({
    code: "chart-gap",
    path: ["sizes", "S", "torso-length"],
    received: "38-43 cm",
    facts: { size: "S", other: "M", dimension: "torso-length", fromMm: 430, toMm: 450, widthMm: 20 },
  });
});

test("a size inside another is so in one dimension, which says nothing of the others", () => {
  const { chart } = read("size,torso (cm),hip belt (cm)\nXS,36-40,72-80\nS,39-44,70-84");
  const issue = auditChart(chart).find(({ code }) => code === "chart-size-inside");
  expect(issue?.message).toBe(
    "XS lies wholly inside S in hip-belt girth: by hip-belt girth alone nobody fits XS only",
  );
});

test("a slip of the pen is explained", () => {
  const issue = auditChart(read("size,torso (cm)\nM,15-17").chart)[0];
  expect(issue?.message).toBe(
    "M: 150 to 170 mm is no torso length of a person; if the figures are inches and not centimetres, it would be 381 to 431.8 mm",
  );
  expect(issue?.facts).toMatchObject({
    slipCode: "inches-as-centimetres",
    wouldBeFromMm: 381,
    wouldBeToMm: 431.8,
  });
});

test("an open end is told in words", () => {
  expect(auditChart(read("size,torso (cm)\nM,<18").chart)[0]?.message).toContain(
    "M: up to 180 mm is no torso length",
  );
  expect(auditChart(read("size,torso (cm)\nM,90+").chart)[0]?.message).toContain(
    "M: from 900 mm is no torso length",
  );
});

test("a sound chart has nothing to report", () => {
  expect(auditChart(read("size,torso (cm),hip belt (cm)\nS,38-43,70-85\nM,43-48,85-100").chart)).toEqual([]);
});

test("a wide overlap of lengths is told as one", () => {
  const issue = auditChart(read("size,torso (cm)\nS,38-47\nM,43-48").chart)[0];
  expect(issue?.code).toBe("chart-overlap-wide");
  expect(issue?.facts).toMatchObject({ widthMm: 40, usualMm: 30 });
});

test("what the import has told is not told again", () => {
  const { chart } = read("size,hip (cm)\nS,70-98\nM,98-110");
  const told = auditChart(chart);
  expect(codes(told)).toContain("chart-girth-unstated");
  const text = "size,hip (cm)\nS,70-98\nM,98-110";
  const all = codes(auditChartText(text, { chart: "c" }));
  expect(all).toContain("chart-hip-unstated");
  expect(all).not.toContain("chart-girth-unstated");
});
