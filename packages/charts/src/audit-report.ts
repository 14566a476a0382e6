import type { AuditFinding, ChartTable } from "./audit-finding.ts";
import { auditLengths } from "./audit-lengths.ts";
import { auditNeighbours } from "./audit-neighbours.ts";
import { auditCapacities, auditNames, auditOpenEnds } from "./audit-order.ts";
import { type AnySize, inOrder } from "./in-order.ts";
import { chartDimensions, type SizeChart } from "./size-chart.ts";

/**
 * Looks a chart over and returns the findings as typed facts, all lengths in millimetres;
 * {@link auditChart} puts them into words. The order of the sizes in the chart makes no difference.
 *
 * Looked for: gaps and overlaps between neighbouring sizes; a size inside another; equal ranges; sizes
 * whose names and ranges run in opposite orders; open ends that are not at an end; lengths that no person
 * has, and the slip of the pen that explains them; very narrow and very wide ranges; inferred ranges; a
 * hip girth that does not say which; sizes without a dimension; capacity that falls as sizes grow.
 *
 * @example
 * ```ts
 * import { auditReport, parseChart } from "@tapewise/charts";
 * const chart = parseChart("size,torso (cm)\nS,38-43\nM,45-50", { chart: "Crew pack 40" });
 * auditReport(chart); // => [{ kind: "gap", table: "sizes", dimension: "torso-length", size: "S", other: "M", fromMm: 430, toMm: 450, widthMm: 20 }]
 * ```
 */
export function auditReport(chart: SizeChart): readonly AuditFinding[] {
  return [
    ...auditTable(chart.sizes, "sizes", chart),
    ...capacities(chart),
    ...auditTable(chart.belts, "belts", chart),
  ];
}

function auditTable(
  sizes: readonly AnySize[],
  table: ChartTable,
  { cut }: SizeChart,
): readonly AuditFinding[] {
  const findings: AuditFinding[] = [];
  for (const dimension of chartDimensions) {
    const ordered = inOrder(sizes, dimension);
    if (ordered.length === 0) continue;
    const where = { table, dimension };
    if (dimension === "unstated-hip-girth") findings.push({ kind: "girth-unstated", table, dimension });
    findings.push(...auditLengths(ordered, where, cut), ...auditNeighbours(ordered, where));
    findings.push(...auditNames(ordered, where), ...auditOpenEnds(ordered, where));
  }
  for (const { name, ranges } of sizes) {
    if (Object.keys(ranges).length === 0)
      findings.push({ kind: "size-without-dimension", table, size: name });
  }
  return findings;
}

/** Sizes grow along the first dimension that at least two of them state: the torso's length, as a rule. */
function capacities({ sizes }: SizeChart): readonly AuditFinding[] {
  for (const dimension of chartDimensions) {
    const ordered = inOrder(sizes, dimension);
    if (ordered.length > 1) return auditCapacities(ordered, { table: "sizes", dimension });
  }
  return [];
}
