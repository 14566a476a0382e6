import type { Interval } from "@tapewise/intervals";
import { createIssue, type Facts, type Issue, type IssuePath } from "@tapewise/outcome";
import type { AuditFinding, ChartTable, NeighbourFinding, Slip } from "./audit-finding.ts";
import { auditIssues } from "./audit-issues.ts";
import { auditReport } from "./audit-report.ts";
import { USUAL_OVERLAP_MM } from "./data.ts";
import type { ChartDimension, SizeChart } from "./size-chart.ts";
import { speakDimension } from "./speak-dimension.ts";
import { tidy } from "./tidy.ts";

/**
 * Looks a chart over for what its maker should mend or its user should know. Every issue is a warning: an
 * overlap, for instance, is usual, and the issue says how wide it is. The path names the size and the
 * dimension; lengths among the facts are in millimetres. See {@link auditReport} for what is looked for
 * and for the findings as typed facts.
 *
 * What the import has told already, given as `told`, is not told again.
 *
 * Only the text of a chart shows whether its inch and centimetre columns agree: for that, see
 * {@link auditChartText}.
 *
 * Issue codes: `chart-gap`, `chart-gap-of-writing`, `chart-overlap`, `chart-overlap-wide`,
 * `chart-size-inside`, `chart-ranges-equal`, `chart-sizes-out-of-order`, `chart-end-open-inside`,
 * `chart-length-suspicious`, `chart-length-implausible`, `chart-range-narrow`, `chart-range-wide`,
 * `chart-interval-inferred`, `chart-girth-unstated`, `chart-size-without-dimension`, `chart-capacity-falls`.
 *
 * @example
 * ```ts
 * import { auditChart, parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso (cm)\nS,38-43\nM,45-50", { chart: "Crew pack 40" });
 * auditChart(chart)[0]?.path; // => ["sizes", "S", "torso-length"]
 * auditChart(chart)[0]?.message; // => "S and M leave a gap of 20 mm in torso length, from 430 to 450 mm"
 * ```
 */
export function auditChart(chart: SizeChart, told: readonly Issue[] = []): readonly Issue[] {
  const stated = statedTexts(chart);
  const isTold = told.some(({ code }) => code === "chart-hip-unstated");
  const findings = auditReport(chart).filter(({ kind }) => !(isTold && kind === "girth-unstated"));
  return findings.map((finding) => {
    const path = pathOf(finding);
    const received = stated.get(path.join("\n"));
    return createIssue(auditIssues, `chart-${finding.kind}`, { path, facts: factsOf(finding), received });
  });
}

/** Each range in the words of the chart, by the path of its issues. */
function statedTexts(chart: SizeChart): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  const add = (table: ChartTable, sizes: SizeChart["sizes"] | SizeChart["belts"]): void => {
    for (const { name, ranges } of sizes) {
      for (const [dimension, range] of Object.entries(ranges)) {
        if (range !== undefined) texts.set([table, name, dimension].join("\n"), range.stated.join(" | "));
      }
    }
  };
  add("sizes", chart.sizes);
  add("belts", chart.belts);
  return texts;
}

function pathOf(finding: AuditFinding): IssuePath {
  const size = "size" in finding ? [finding.size] : [];
  const dimension: readonly ChartDimension[] = "dimension" in finding ? [finding.dimension] : [];
  return [finding.table, ...size, ...dimension];
}

const SLIP_WORDS: Readonly<Record<Slip, string>> = {
  "inches-as-centimetres": "if the figures are inches and not centimetres",
  "centimetres-as-inches": "if the figures are centimetres and not inches",
  "ten-times-too-small": "if the figures are ten times too small",
  "ten-times-too-large": "if the figures are ten times too large",
};

function factsOf(finding: AuditFinding): Facts {
  switch (finding.kind) {
    case "girth-unstated":
      return { dimension: finding.dimension };
    case "size-without-dimension":
      return { size: finding.size };
    default:
      return {
        size: finding.size,
        dimension: finding.dimension,
        what: speakDimension(finding.dimension),
        ...moreFacts(finding),
      };
  }
}

function moreFacts(
  finding: Exclude<AuditFinding, { readonly kind: "girth-unstated" | "size-without-dimension" }>,
): Facts {
  switch (finding.kind) {
    case "gap":
    case "gap-of-writing":
      return { other: finding.other, ...widthFacts(finding) };
    case "overlap":
    case "overlap-wide":
      return { other: finding.other, ...widthFacts(finding), usualMm: USUAL_OVERLAP_MM };
    case "size-inside":
    case "ranges-equal":
    case "sizes-out-of-order":
      return { other: finding.other };
    case "end-open-inside":
      return { other: finding.other, end: finding.end };
    case "length-implausible":
      return { ...lengthFacts("", finding.stated), ...limitFacts(finding.limits) };
    case "length-suspicious": {
      const meant = {
        slip: SLIP_WORDS[finding.slip],
        slipCode: finding.slip,
        ...lengthFacts("wouldBe", finding.wouldBe),
      };
      return { ...lengthFacts("", finding.stated), ...limitFacts(finding.limits), ...meant };
    }
    case "range-narrow":
    case "range-wide":
      return { widthMm: tidy(finding.widthMm), limitMm: tidy(finding.limitMm) };
    case "interval-inferred":
      return { nominalMm: tidy(finding.nominalMm), ...lengthFacts("", finding.interval) };
    case "capacity-falls":
      return {
        other: finding.other,
        sizeLitres: tidy(finding.sizeLitres),
        otherLitres: tidy(finding.otherLitres),
      };
  }
}

function widthFacts({ fromMm, toMm, widthMm }: NeighbourFinding): Facts {
  return { fromMm: tidy(fromMm), toMm: tidy(toMm), widthMm: tidy(widthMm) };
}

/** The finite ends as numbers, and the whole as words, because an open end is no number. */
function lengthFacts(prefix: "" | "wouldBe", { from, to }: Interval): Facts {
  const name = (end: "From" | "To"): string =>
    prefix === "" ? `${end.toLowerCase()}Mm` : `${prefix}${end}Mm`;
  return {
    ...(Number.isFinite(from) ? { [name("From")]: tidy(from) } : {}),
    ...(Number.isFinite(to) ? { [name("To")]: tidy(to) } : {}),
    [prefix === "" ? "lengths" : "wouldBe"]: lengthWords(from, to),
  };
}

function lengthWords(from: number, to: number): string {
  if (from === to) return `${tidy(from)} mm`;
  if (!Number.isFinite(from)) return `up to ${tidy(to)} mm`;
  return Number.isFinite(to) ? `${tidy(from)} to ${tidy(to)} mm` : `from ${tidy(from)} mm`;
}

function limitFacts({ from, to }: Interval): Facts {
  return { leastMm: tidy(from), mostMm: tidy(to) };
}
