import { type DimensionMatch, findDimension } from "@tapewise/landmarks";
import type { ChartDimension } from "./size-chart.ts";

/** What the words of a header mean. */
export type ChartDimensionMatch =
  | { readonly kind: "match"; readonly dimension: ChartDimension }
  | Exclude<DimensionMatch, { readonly kind: "match" }>;

/**
 * The dimension that the words of a header name. "Hip" alone, which may be the girth around the iliac
 * crests or the widest one, is a dimension of its own (`unstated-hip-girth`); other words with several
 * meanings stay ambiguous.
 */
export function findChartDimension(words: string): ChartDimensionMatch {
  if (/^\s*unstated[\s_-]hip[\s_-]girth\s*$/i.test(words))
    return { kind: "match", dimension: "unstated-hip-girth" };
  const found = findDimension(words);
  if (found.kind === "match") return { kind: "match", dimension: found.id };
  const isHip =
    found.kind === "ambiguous" &&
    found.candidates.every((id) => id === "hip-belt-girth" || id === "hip-girth");
  return isHip ? { kind: "match", dimension: "unstated-hip-girth" } : found;
}
