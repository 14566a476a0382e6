import { fc, test } from "@fast-check/vitest";
import {
  type AuditFinding,
  auditChart,
  auditReport,
  type NeighbourFinding,
  parseChart,
  type SizeChart,
} from "@tapewise/charts";
import { hull, interval, intervalLength, union, unionLength } from "@tapewise/intervals";
import { expect } from "vitest";
import { mixedRows, type Row, rangeRows, tableOf, tilingRows } from "./charts-arbitraries.ts";

const chartOf = (rows: readonly Row[]): SizeChart => parseChart(tableOf(rows), { chart: "c" });
const asSet = (findings: readonly unknown[]): readonly string[] =>
  findings.map((each) => JSON.stringify(each)).sort();

const isNeighbour = (finding: AuditFinding): finding is NeighbourFinding =>
  ["gap", "gap-of-writing", "overlap", "overlap-wide"].includes(finding.kind);
const isGap = (finding: AuditFinding): finding is NeighbourFinding =>
  isNeighbour(finding) && finding.kind.startsWith("gap");
const gapsOf = (rows: readonly Row[]): readonly NeighbourFinding[] =>
  auditReport(chartOf(rows)).filter(isGap);

test.prop([
  mixedRows.chain((rows) =>
    fc.tuple(fc.constant(rows), fc.shuffledSubarray([...rows], { minLength: rows.length })),
  ),
])("law: the order of the lines changes no finding", ([rows, shuffled]) => {
  expect(asSet(auditReport(chartOf(shuffled)))).toEqual(asSet(auditReport(chartOf(rows))));
  expect(asSet(auditChart(chartOf(shuffled)))).toEqual(asSet(auditChart(chartOf(rows))));
});

test.prop([tilingRows])(
  "law: sizes that meet end to end have neither gap nor overlap, and none lies inside another",
  (rows) => {
    const kinds = auditReport(chartOf(rows)).map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind !== "range-wide" && kind !== "range-narrow")).toEqual([]);
  },
);

test.prop([fc.uniqueArray(fc.integer({ min: 35, max: 55 }), { minLength: 2, maxLength: 6 })])(
  "law: sizes of nominal lengths alone have neither gap nor overlap",
  (lengths) => {
    const rows = lengths.map(
      (nominal, position): Row => ({ name: `Z${position}`, range: undefined, nominal }),
    );
    expect(auditReport(chartOf(rows)).map(({ kind }) => kind)).toEqual(rows.map(() => "interval-inferred"));
  },
);

test.prop([rangeRows])("law: gaps are what the sizes leave of their span", (rows) => {
  const ranges = rows.flatMap(({ range }) =>
    range === undefined ? [] : [interval(range.from * 10, range.to * 10)],
  );
  const [first = interval(0, 0), ...others] = ranges;
  const left = intervalLength(hull(first, ...others)) - unionLength(union(...ranges));
  expect(gapsOf(rows).reduce((sum, gap) => sum + gap.widthMm, 0)).toBeCloseTo(left, 6);
});

test.prop([rangeRows, fc.nat(), fc.nat({ max: 10 }), fc.nat({ max: 10 })])(
  "law: widening a size creates no gap",
  (rows, at, below, above) => {
    const position = at % rows.length;
    const wider = rows.map((row, each): Row => {
      if (each !== position || row.range === undefined) return row;
      return { ...row, range: { from: row.range.from - below, to: row.range.to + above } };
    });
    const before = gapsOf(rows);
    const { range } = rows[position] ?? {};
    for (const gap of gapsOf(wider)) {
      // A gap is either a part of an old one, or lies outside the old span, beside the widened size.
      const isOld = before.some((old) => old.fromMm <= gap.fromMm && gap.toMm <= old.toMm);
      expect(isOld, `${gap.fromMm}-${gap.toMm} after widening ${range?.from}-${range?.to}`).toBe(true);
    }
  },
);

test.prop([rangeRows, fc.integer({ min: 1, max: 5 })])(
  "law: shifting a chart shifts its gaps and overlaps",
  (rows, by) => {
    const shifted = rows.map(
      (row): Row =>
        row.range === undefined
          ? row
          : { ...row, range: { from: row.range.from + by, to: row.range.to + by } },
    );
    const moved = auditReport(chartOf(rows))
      .filter(isNeighbour)
      .map((finding) => ({ ...finding, fromMm: finding.fromMm + 10 * by, toMm: finding.toMm + 10 * by }));
    expect(auditReport(chartOf(shifted)).filter(isNeighbour)).toEqual(moved);
  },
);

test.prop([mixedRows])(
  "law: a finding names sizes of the chart, and its width is what lies between its ends",
  (rows) => {
    const names = new Set(rows.map((row) => row.name));
    for (const finding of auditReport(chartOf(rows))) {
      if ("size" in finding) expect(names).toContain(finding.size);
      if ("other" in finding) expect(names).toContain(finding.other);
      if (isNeighbour(finding)) {
        expect(finding.widthMm).toBeGreaterThan(0);
        expect(finding.toMm - finding.fromMm).toBe(finding.widthMm);
      }
    }
  },
);

test.prop([rangeRows])("law: auditing changes nothing, and says the same twice", (rows) => {
  const chart = chartOf(rows);
  const before = JSON.stringify(chart);
  expect(auditReport(chart)).toEqual(auditReport(chart));
  expect(JSON.stringify(chart)).toBe(before);
});
