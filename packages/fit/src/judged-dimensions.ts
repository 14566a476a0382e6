import type { ChartDimension, SizeRanges } from "@tapewise/charts";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { Belief, Beliefs } from "./belief.ts";

/** A dimension of a chart that something is known of. */
export interface JudgedDimension {
  readonly charted: ChartDimension;
  readonly belief: Belief;
}

/** What the length of a harness goes by, the most telling first. */
const BACK_LENGTHS: readonly ChartDimension[] = ["torso-length", "back-waist-length", "stature"];

/** Whether a larger figure asks for a longer harness. */
export function setsHarnessLength(dimension: ChartDimension): boolean {
  return BACK_LENGTHS.includes(dimension);
}

/**
 * Every dimension that a chart states: first what the length of a harness goes by, then the rest in the
 * order of the list of dimensions. The order of the chart plays no part.
 */
export function chartedDimensions(
  sizes: readonly { readonly ranges: SizeRanges }[],
): readonly ChartDimension[] {
  const stated = (name: ChartDimension) => sizes.some(({ ranges }) => ranges[name] !== undefined);
  return [...new Set([...BACK_LENGTHS, ...dimensionIds, "unstated-hip-girth" as const])].filter(stated);
}

/** The dimensions that something is known of, in their order. */
export function judgeDimensions(
  charted: readonly ChartDimension[],
  beliefs: Beliefs,
): readonly JudgedDimension[] {
  return charted.flatMap((name): readonly JudgedDimension[] => {
    const belief = beliefFor(name, beliefs);
    return belief === undefined ? [] : [{ charted: name, belief }];
  });
}

/** A chart that says "hip" and not which is judged where its belt would sit, else at the widest part. */
function beliefFor(name: ChartDimension, beliefs: Beliefs): Belief | undefined {
  if (name !== "unstated-hip-girth") return beliefs.of(name);
  const candidates: readonly DimensionId[] = ["hip-belt-girth", "hip-girth"];
  const known = candidates.flatMap((one) => beliefs.of(one) ?? []);
  return known.find((belief) => belief.from !== "prior") ?? known[0];
}
