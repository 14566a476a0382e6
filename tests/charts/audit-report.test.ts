import { type AuditFinding, auditReport, type ParseChartOptions } from "@tapewise/charts";
import { describe, expect, test } from "vitest";
import { read } from "./charts-in-tests.ts";

const TORSO = { table: "sizes", dimension: "torso-length" } as const;

function findings(rows: string, options: ParseChartOptions = {}): readonly AuditFinding[] {
  return auditReport(read(`size,torso (cm)\n${rows}`, options).chart);
}

describe("neighbouring sizes", () => {
  test("that meet are in order", () => {
    expect(findings("S,38-43\nM,43-48\nL,48-53")).toEqual([]);
  });

  test("with a gap", () => {
    expect(findings("S,38-43\nM,45-50")).toEqual([
      { kind: "gap", ...TORSO, size: "S", other: "M", fromMm: 430, toMm: 450, widthMm: 20 },
    ]);
  });

  test("with a gap of one step of their figures", () => {
    // In whole centimetres a step is 10 mm; in halves it is 5 mm, and 10 mm are a gap.
    expect(findings("S,38-42\nM,43-47")).toMatchObject([{ kind: "gap-of-writing", widthMm: 10 }]);
    expect(findings("S,38.0-42.0\nM,43.0-47.0")).toMatchObject([{ kind: "gap", widthMm: 10 }]);
    // Whole inches: 25.4 mm.
    expect(auditReport(read("size,torso (in)\nS,15-16\nM,17-18").chart)).toMatchObject([
      { kind: "gap-of-writing" },
    ]);
  });

  test("with an overlap, usual or wide", () => {
    expect(findings("S,38-45\nM,43-48")).toEqual([
      { kind: "overlap", ...TORSO, size: "S", other: "M", fromMm: 430, toMm: 450, widthMm: 20 },
    ]);
    expect(findings("S,38-46\nM,43-48")).toMatchObject([{ kind: "overlap", widthMm: 30 }]);
    expect(findings("S,38-47\nM,43-48")).toMatchObject([{ kind: "overlap-wide", widthMm: 40 }]);
  });

  test("but not with a wide one in a girth: a hip belt takes in a wide range on purpose", () => {
    const text = "size,hip-belt-girth (cm)\nS,70-98\nM,80-110";
    expect(auditReport(read(text).chart)).toMatchObject([{ kind: "overlap", widthMm: 180 }]);
    const unstated = auditReport(read("size,hip (cm)\nS,70-98\nM,80-110").chart);
    expect(unstated.map(({ kind }) => kind)).toEqual(expect.arrayContaining(["overlap"]));
  });

  test("are the ones next to each other", () => {
    // S and L overlap too, but M lies between them.
    expect(findings("S,38-46\nM,44-50\nL,45-53").map(({ kind }) => kind)).toEqual([
      "overlap",
      "overlap-wide",
    ]);
  });

  test("hidden by a longer one leave no gap", () => {
    expect(findings("S,38-42\nL,45-48\nXL,37-52").map(({ kind }) => kind)).not.toContain("gap");
  });
});

describe("sizes that stand wrongly to each other", () => {
  test.each([
    ["M,43-48\nS,44-46", "S", "M"],
    ["M,43-48\nS,43-46", "S", "M"],
    ["M,43-48\nS,45-48", "S", "M"],
    ["M,43+\nS,45-48", "S", "M"],
  ])("inside another: %j", (rows, size, other) => {
    expect(findings(rows)).toContainEqual({ kind: "size-inside", ...TORSO, size, other });
  });

  test("of one range", () => {
    expect(findings("M,43-48\nL,43-48")).toEqual([{ kind: "ranges-equal", ...TORSO, size: "L", other: "M" }]);
  });

  test("whose names run the other way", () => {
    expect(findings("S,48-53\nM,43-48\nL,53-58")).toEqual([
      { kind: "sizes-out-of-order", ...TORSO, size: "S", other: "M" },
    ]);
    expect(findings("Regular,48-53\nShort,43-48")).toEqual([]);
    expect(findings("Regular,43-48\nShort,48-53")).toMatchObject([
      { kind: "sizes-out-of-order", size: "Short" },
    ]);
    expect(findings("S/M,43-48\nL/XL,38-43")).toMatchObject([
      { kind: "sizes-out-of-order", size: "S/M", other: "L/XL" },
    ]);
    // Names of different kinds say nothing of each other.
    expect(findings("Tall,38-43\nXS,43-48")).toEqual([]);
  });

  test("with an open end in the middle", () => {
    expect(findings("S,38-43\nM,<48\nL,48+")).toContainEqual({
      kind: "end-open-inside",
      ...TORSO,
      size: "M",
      end: "lower",
      other: "S",
    });
    expect(findings("S,<43\nM,43+\nL,48-53")).toContainEqual({
      kind: "end-open-inside",
      ...TORSO,
      size: "M",
      end: "upper",
      other: "L",
    });
    expect(findings("S,<43\nM,43-48\nL,48+")).toEqual([]);
  });
});

describe("figures that no person has", () => {
  // A torso of 15 to 17 cm is none; as inches it is 381 to 431.8 mm. 38 to 43 inches are 965.2 to 1092.2 mm.
  test("inches in a centimetre column, and the reverse", () => {
    expect(findings("M,15-17")).toMatchObject([
      { kind: "length-suspicious", slip: "inches-as-centimetres", stated: { from: 150, to: 170 } },
    ]);
    const [inches] = findings("M,15-17");
    expect(inches?.kind === "length-suspicious" && inches.wouldBe.to).toBeCloseTo(431.8, 9);
    const [metric] = auditReport(read("size,torso (in)\nM,38-43").chart);
    expect(metric).toMatchObject({ kind: "length-suspicious", slip: "centimetres-as-inches" });
    expect(metric?.kind === "length-suspicious" && metric.wouldBe.from).toBeCloseTo(380, 9);
  });

  test("ten times too large or too small", () => {
    expect(findings("M,430-480")).toMatchObject([{ kind: "length-suspicious", slip: "ten-times-too-large" }]);
    expect(auditReport(read("size,torso (mm)\nM,43-48").chart)).toMatchObject([
      { kind: "length-suspicious", slip: "ten-times-too-small", wouldBe: { from: 430, to: 480 } },
    ]);
  });

  test("without an explanation", () => {
    expect(findings("M,70-72")).toMatchObject([
      { kind: "length-implausible", stated: { from: 700, to: 720 } },
    ]);
    expect(findings("M,15-43")).toMatchObject([{ kind: "length-implausible" }]);
  });

  test("at an open end there is no figure", () => {
    expect(findings("M,<48\nL,48+")).toEqual([]);
    expect(findings("M,<18")).toMatchObject([{ kind: "length-suspicious", slip: "inches-as-centimetres" }]);
  });

  test("for a girth that may be either, the limits of both count", () => {
    const chart = (range: string) => read(`size,hips (cm)\nM,${range}`).chart;
    expect(auditReport(chart("60-100")).map(({ kind }) => kind)).toEqual(["girth-unstated"]);
    expect(auditReport(chart("30-40")).map(({ kind }) => kind)).toEqual([
      "girth-unstated",
      "length-suspicious",
    ]);
  });

  test("in a youth's chart start lower", () => {
    expect(findings("XS,25-29")).toMatchObject([{ kind: "length-implausible" }]);
    expect(findings("XS,25-29", { cut: "youth" })).toEqual([]);
  });
});

describe("ranges", () => {
  test("too narrow to tell apart", () => {
    expect(findings("M,43-43.5")).toEqual([
      { kind: "range-narrow", ...TORSO, size: "M", widthMm: 5, limitMm: 10 },
    ]);
    expect(findings("M,43-43")).toMatchObject([{ kind: "range-narrow", widthMm: 0 }]);
    expect(findings("M,43-44")).toEqual([]);
  });

  test("that hold most people", () => {
    expect(findings("M,35-55")).toMatchObject([{ kind: "range-wide", widthMm: 200 }]);
    expect(findings("M,35+")).toEqual([]);
  });

  test("inferred", () => {
    expect(findings("S,40\nM,46")).toMatchObject([
      { kind: "interval-inferred", size: "S", nominalMm: 400, interval: { from: 370, to: 430 } },
      { kind: "interval-inferred", size: "M", nominalMm: 460, interval: { from: 430, to: 490 } },
    ]);
  });
});

describe("the rest", () => {
  test("a girth that does not say which", () => {
    expect(auditReport(read("size,hips (cm)\nM,80-100").chart)).toEqual([
      { kind: "girth-unstated", table: "sizes", dimension: "unstated-hip-girth" },
    ]);
  });

  test("a size without a dimension", () => {
    expect(findings("M,43-48\nL,")).toEqual([{ kind: "size-without-dimension", table: "sizes", size: "L" }]);
  });

  test("a capacity that falls", () => {
    const chart = read("size,torso (cm),capacity (L)\nM,43-48,40\nS,38-43,42\nL,48-53,").chart;
    expect(auditReport(chart)).toEqual([
      { kind: "capacity-falls", ...TORSO, size: "S", other: "M", sizeLitres: 42, otherLitres: 40 },
    ]);
    expect(auditReport(read("size,torso (cm),capacity (L)\nM,43-48,40\nS,38-43,40").chart)).toEqual([]);
  });

  test("hip belts that are sized separately", () => {
    const chart = read("size,torso (cm)\nM,43-48\n\nbelt,hip belt (cm)\nS,70-80\nL,90-100").chart;
    expect(auditReport(chart)).toMatchObject([
      { kind: "gap", table: "belts", dimension: "hip-belt-girth", widthMm: 100 },
    ]);
  });
});

test("ten thousand sizes take a moment", () => {
  const rows = Array.from({ length: 10_000 }, (_, n) => `P${n},${(n % 400) + 300}-${(n % 390) + 340}`).join(
    "\n",
  );
  const { chart } = read(`size,torso (mm)\n${rows}`);
  const started = performance.now();
  expect(auditReport(chart).length).toBeGreaterThan(0);
  expect(performance.now() - started).toBeLessThan(10_000);
});
