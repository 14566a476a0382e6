import { speakDimension } from "@tapewise/charts";
import { plausibleLimits } from "@tapewise/landmarks";
import { createIssue, type Issue } from "@tapewise/outcome";
import type { Beliefs } from "./belief.ts";
import { choiceIssues } from "./choice-issues.ts";

/**
 * Estimates that lie outside what people have, children included: a wrong unit, as a rule. They are
 * questioned, never altered. A reading as such may be questioned earlier, and by narrower limits.
 */
export function questionByLimits(beliefs: Beliefs): readonly Issue[] {
  return beliefs.list.flatMap(({ dimension, estimate }) => {
    if (estimate === undefined) return [];
    const { from: fromMm, to: toMm } = plausibleLimits(dimension, "child");
    if (estimate.mm >= fromMm && estimate.mm <= toMm) return [];
    const isBelow = estimate.mm < fromMm;
    const differenceMm = isBelow ? fromMm - estimate.mm : estimate.mm - toMm;
    return [
      createIssue(choiceIssues, "estimate-implausible", {
        path: ["readings", dimension],
        received: estimate.readings.map((reading) => reading.text).join(", "),
        facts: {
          dimension: speakDimension(dimension),
          readingMm: Math.round(estimate.mm),
          differenceMm: Math.round(differenceMm),
          side: isBelow ? "below" : "above",
          fromMm,
          toMm,
        },
      }),
    ];
  });
}
