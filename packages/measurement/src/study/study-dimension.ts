import { type DimensionId, dimensionName } from "@tapewise/landmarks";
import type { Issue } from "@tapewise/outcome";
import type { LongColumn } from "./long-column.ts";
import type { StudyReport } from "./study-report.ts";

/** The dimension that a header and the caller agree on; nothing where neither names one. */
export function agreeOnDimension(
  column: Pick<LongColumn, "dimension" | "candidates">,
  wanted: DimensionId | undefined,
  header:
    | { readonly text: string; readonly at?: { readonly line: number; readonly column: number } }
    | undefined,
  report: StudyReport,
  issues: Issue[],
): DimensionId | undefined | "disagree" {
  const { dimension, candidates } = column;
  const received = header?.text.trim();
  const mayBe = dimension === undefined ? candidates : [dimension];
  if (wanted !== undefined && mayBe !== undefined && !mayBe.includes(wanted)) {
    const facts = { dimension: dimensionName(wanted), other: mayBe.map(dimensionName).join(" or ") };
    issues.push(report("study-dimension-disagrees", { received, facts, at: header?.at }));
    return "disagree";
  }
  if (wanted !== undefined) return wanted;
  if (candidates !== undefined) {
    const facts = { candidates: candidates.map(dimensionName).join(" or ") };
    issues.push(report("study-dimension-unclear", { received, facts, at: header?.at }));
  }
  return dimension;
}
