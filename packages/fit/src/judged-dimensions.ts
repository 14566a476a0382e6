import type { ChartDimension, SizeRanges } from "@tapewise/charts";
import type { DimensionId } from "@tapewise/landmarks";
import type { Belief, Beliefs } from "./belief.ts";

/** A dimension of a chart that something is known of. */
export interface JudgedDimension {
  readonly charted: ChartDimension;
  readonly belief: Belief;
}

/** Every dimension that a chart states, in the order of its first appearance. */
export function chartedDimensions(
  sizes: readonly { readonly ranges: SizeRanges }[],
): readonly ChartDimension[] {
  const names = new Set<ChartDimension>();
  for (const size of sizes) {
    for (const [name, range] of Object.entries(size.ranges)) {
      if (range !== undefined) names.add(name as ChartDimension);
    }
  }
  return [...names];
}

/**
 * The dimensions of a chart that can be judged, the one that the chart turns on first: the torso length
 * where there is one, for a harness is made to it.
 */
export function judgeDimensions(
  charted: readonly ChartDimension[],
  beliefs: Beliefs,
): readonly JudgedDimension[] {
  const judged = charted.flatMap((name): readonly JudgedDimension[] => {
    const belief = beliefFor(name, beliefs);
    return belief === undefined ? [] : [{ charted: name, belief }];
  });
  return judged.toSorted(
    (a, b) => Number(b.charted === "torso-length") - Number(a.charted === "torso-length"),
  );
}

/** A chart that says "hip" and not which is judged where its belt would sit, else at the widest part. */
function beliefFor(name: ChartDimension, beliefs: Beliefs): Belief | undefined {
  if (name !== "unstated-hip-girth") return beliefs.of(name);
  const candidates: readonly DimensionId[] = ["hip-belt-girth", "hip-girth"];
  const known = candidates.flatMap((one) => beliefs.of(one) ?? []);
  return known.find((belief) => belief.from !== "prior") ?? known[0];
}
