import { equals } from "@tapewise/intervals";
import type { CapacityFinding, OpenEndFinding, RelationFinding } from "./audit-finding.ts";
import type { Where } from "./audit-neighbours.ts";
import { coveredSizes } from "./covered-sizes.ts";
import type { AnySize, Ranged } from "./in-order.ts";
import type { Size } from "./size-chart.ts";
import { type SizeRank, sizeRank } from "./size-rank.ts";

/** Sizes that by their names are smaller than the next, and by their ranges larger. */
export function auditNames(ordered: readonly Ranged<AnySize>[], where: Where): readonly RelationFinding[] {
  const families = new Map<
    SizeRank["family"],
    { readonly rank: number; readonly entry: Ranged<AnySize> }[]
  >();
  for (const entry of ordered) {
    const known = rankOf(entry.size.name);
    if (known === undefined) continue;
    const family = families.get(known.family) ?? [];
    family.push({ rank: known.rank, entry });
    families.set(known.family, family);
  }
  const findings: RelationFinding[] = [];
  for (const family of families.values()) {
    const ranked = family.sort((a, b) => a.rank - b.rank);
    for (const [position, { rank, entry: other }] of ranked.entries()) {
      const before = ranked[position - 1];
      if (before === undefined || before.rank === rank || !isLarger(before.entry, other)) continue;
      const names = { size: before.entry.size.name, other: other.size.name };
      findings.push({ kind: "sizes-out-of-order", ...where, ...names });
    }
  }
  return findings;
}

/** A double size stands in the middle of the sizes that it covers. */
function rankOf(name: string): SizeRank | undefined {
  const ranks = coveredSizes(name).map(sizeRank);
  const [first] = ranks;
  if (first === undefined) return undefined;
  const sum = ranks.reduce((total, each) => total + (each?.rank ?? 0), 0);
  return { family: first.family, rank: sum / ranks.length };
}

function isLarger(a: Ranged<AnySize>, b: Ranged<AnySize>): boolean {
  const first = a.range.interval;
  const second = b.range.interval;
  return first.from >= second.from && first.to >= second.to && !equals(first, second);
}

/** Open ends at a size that is not the smallest, or not the largest. */
export function auditOpenEnds(ordered: readonly Ranged<AnySize>[], where: Where): readonly OpenEndFinding[] {
  const [any] = ordered;
  if (any === undefined) return [];
  let lowest = any;
  let highest = any;
  for (const entry of ordered) {
    if (entry.range.interval.to < lowest.range.interval.to) lowest = entry;
    if (entry.range.interval.from > highest.range.interval.from) highest = entry;
  }
  return ordered.flatMap(({ size, range: { interval } }): OpenEndFinding[] => {
    const findings: OpenEndFinding[] = [];
    const open = { kind: "end-open-inside", ...where, size: size.name } as const;
    if (interval.from === Number.NEGATIVE_INFINITY && lowest.range.interval.to < interval.to) {
      findings.push({ ...open, end: "lower", other: lowest.size.name });
    }
    if (interval.to === Number.POSITIVE_INFINITY && highest.range.interval.from > interval.from) {
      findings.push({ ...open, end: "upper", other: highest.size.name });
    }
    return findings;
  });
}

/** Larger sizes that hold less than the one before them. */
export function auditCapacities(ordered: readonly Ranged<Size>[], where: Where): readonly CapacityFinding[] {
  const findings: CapacityFinding[] = [];
  let before: Ranged<Size> | undefined;
  for (const entry of ordered) {
    const { name: other, capacityLitres: otherLitres } = entry.size;
    if (otherLitres === undefined) continue;
    const sizeLitres = before?.size.capacityLitres;
    if (
      before !== undefined &&
      sizeLitres !== undefined &&
      otherLitres < sizeLitres &&
      isLarger(entry, before)
    ) {
      findings.push({
        kind: "capacity-falls",
        ...where,
        size: before.size.name,
        other,
        sizeLitres,
        otherLitres,
      });
    }
    before = entry;
  }
  return findings;
}
