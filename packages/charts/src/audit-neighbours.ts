import { equals } from "@tapewise/intervals";
import { dimensionKind } from "@tapewise/landmarks";
import type { NeighbourFinding, RelationFinding } from "./audit-finding.ts";
import { USUAL_OVERLAP_MM } from "./data.ts";
import type { AnySize, Ranged } from "./in-order.ts";
import type { ChartDimension } from "./size-chart.ts";
import { statementOf } from "./statement-of.ts";

/** What of a range's surroundings every finding about it repeats. */
export type Where = Pick<NeighbourFinding, "table" | "dimension">;

/**
 * Gaps and overlaps between neighbouring sizes, sizes inside another, and equal ranges. One pass over
 * the sizes in order, each against the one that reaches furthest so far.
 */
export function auditNeighbours(
  ordered: readonly Ranged<AnySize>[],
  where: Where,
): readonly (NeighbourFinding | RelationFinding)[] {
  const findings: (NeighbourFinding | RelationFinding)[] = [];
  let furthest = ordered[0];
  let previous = ordered[0];
  for (const next of ordered.slice(1)) {
    if (furthest === undefined || previous === undefined) break;
    if (equals(next.range.interval, previous.range.interval)) {
      findings.push({ kind: "ranges-equal", ...where, size: previous.size.name, other: next.size.name });
      continue;
    }
    findings.push(...relate(furthest, next, where));
    if (next.range.interval.to > furthest.range.interval.to) furthest = next;
    previous = next;
  }
  return findings;
}

/** Two sizes of which the second begins no earlier than the first, and not with the same range. */
function relate(
  first: Ranged<AnySize>,
  second: Ranged<AnySize>,
  where: Where,
): readonly (NeighbourFinding | RelationFinding)[] {
  const a = first.range.interval;
  const b = second.range.interval;
  const names = { size: first.size.name, other: second.size.name };
  if (b.to <= a.to) return [{ kind: "size-inside", ...where, size: names.other, other: names.size }];
  if (b.from === a.from) return [{ kind: "size-inside", ...where, ...names }];
  if (b.from > a.to) {
    const widthMm = b.from - a.to;
    const kind = widthMm <= stepOf(first, second) * (1 + 1e-9) ? "gap-of-writing" : "gap";
    return [{ kind, ...where, ...names, fromMm: a.to, toMm: b.from, widthMm }];
  }
  if (b.from === a.to) return [];
  const widthMm = a.to - b.from;
  // Hip belts take in a wide range on purpose: the custom is one of lengths.
  const isWide = widthMm > USUAL_OVERLAP_MM && !isGirth(where.dimension);
  const kind = isWide ? "overlap-wide" : "overlap";
  return [{ kind, ...where, ...names, fromMm: b.from, toMm: a.to, widthMm }];
}

/** The coarser step of the two figures at a gap; 0 where they were not written. */
function stepOf(below: Ranged<AnySize>, above: Ranged<AnySize>): number {
  const end = statementOf(below.range.stated[0])?.to;
  const start = statementOf(above.range.stated[0])?.from;
  return Math.max(end?.stepMm ?? 0, start?.stepMm ?? 0);
}

function isGirth(dimension: ChartDimension): boolean {
  return dimension === "unstated-hip-girth" || dimensionKind(dimension) === "girth";
}
