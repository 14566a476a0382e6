import { hull, type Interval, interval, intervalLength } from "@tapewise/intervals";
import { plausibleLimits } from "@tapewise/landmarks";
import type {
  ImplausibleFinding,
  InferredFinding,
  Slip,
  SuspiciousFinding,
  WidthFinding,
} from "./audit-finding.ts";
import type { Where } from "./audit-neighbours.ts";
import { NARROWEST_RANGE_MM, WIDEST_RANGE_SHARE } from "./data.ts";
import type { AnySize, Ranged } from "./in-order.ts";
import type { ChartDimension, Cut, SizeRange } from "./size-chart.ts";
import { statementOf } from "./statement-of.ts";

type LengthFinding = ImplausibleFinding | SuspiciousFinding | WidthFinding | InferredFinding;

const SLIPS: readonly { readonly slip: Slip; readonly factor: number; readonly unit?: "metric" | "inch" }[] =
  [
    { slip: "inches-as-centimetres", factor: 2.54, unit: "metric" },
    { slip: "centimetres-as-inches", factor: 1 / 2.54, unit: "inch" },
    { slip: "ten-times-too-small", factor: 10 },
    { slip: "ten-times-too-large", factor: 1 / 10 },
  ];

/** Figures that no person has, ranges that are too narrow or too wide, and inferred ranges. */
export function auditLengths(
  ordered: readonly Ranged<AnySize>[],
  where: Where,
  cut: Cut | undefined,
): readonly LengthFinding[] {
  const limits = limitsOf(where.dimension, cut);
  const widest = intervalLength(limits) * WIDEST_RANGE_SHARE;
  return ordered.flatMap(({ size, range }): LengthFinding[] => {
    const at = { ...where, size: size.name };
    const findings: LengthFinding[] = [];
    const stated = statedLengths(range);
    const isPlausible = liesWithin(stated, limits);
    if (!isPlausible) findings.push(explain(range, stated, { ...at, limits }));
    if (range.nominalMm !== undefined) {
      findings.push({
        kind: "interval-inferred",
        ...at,
        nominalMm: range.nominalMm,
        interval: range.interval,
      });
      return findings;
    }
    // Of figures that are wrong, the width says nothing.
    if (!isPlausible) return findings;
    const widthMm = intervalLength(range.interval);
    if (widthMm < NARROWEST_RANGE_MM) {
      findings.push({ kind: "range-narrow", ...at, widthMm, limitMm: NARROWEST_RANGE_MM });
    }
    // An open end has no width that could be too large.
    if (widthMm > widest && Number.isFinite(widthMm)) {
      findings.push({ kind: "range-wide", ...at, widthMm, limitMm: widest });
    }
    return findings;
  });
}

/** A girth that may be either of two has the limits of both. */
function limitsOf(dimension: ChartDimension, cut: Cut | undefined): Interval {
  const group = cut === "youth" ? "child" : "adult";
  if (dimension !== "unstated-hip-girth") return plausibleLimits(dimension, group);
  return hull(plausibleLimits("hip-belt-girth", group), plausibleLimits("hip-girth", group));
}

/** What the chart itself says: not an inferred interval, but the length that it was inferred from. */
function statedLengths({ interval: range, nominalMm }: SizeRange): Interval {
  return nominalMm === undefined ? range : interval(nominalMm, nominalMm);
}

/** Whether the stated ends are plausible. An open end states nothing. */
function liesWithin({ from, to }: Interval, limits: Interval): boolean {
  const isPlausible = (end: number): boolean =>
    !Number.isFinite(end) || (end >= limits.from && end <= limits.to);
  return isPlausible(from) && isPlausible(to);
}

function explain(
  range: SizeRange,
  stated: Interval,
  at: Omit<ImplausibleFinding, "kind" | "stated">,
): ImplausibleFinding | SuspiciousFinding {
  const unit = unitOf(range);
  for (const { slip, factor, unit: written } of SLIPS) {
    if (written !== undefined && unit !== undefined && unit !== written) continue;
    const wouldBe = interval(stated.from * factor, stated.to * factor);
    if (liesWithin(wouldBe, at.limits)) return { kind: "length-suspicious", ...at, stated, slip, wouldBe };
  }
  return { kind: "length-implausible", ...at, stated };
}

/** The system of the first statement's unit; unknown for ranges that were never written. */
function unitOf({ stated }: SizeRange): "metric" | "inch" | undefined {
  const statement = statementOf(stated[0]);
  const unit = (statement?.nominal ?? statement?.to ?? statement?.from)?.unit;
  if (unit === undefined) return undefined;
  return unit === "in" || unit === "ft" ? "inch" : "metric";
}
