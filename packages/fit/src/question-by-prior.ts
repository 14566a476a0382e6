import { speakDimension } from "@tapewise/charts";
import type { Prior } from "@tapewise/measurement";
import { createIssue, type Issue } from "@tapewise/outcome";
import { normalUpperTail } from "@tapewise/statistics";
import type { Beliefs } from "./belief.ts";
import { choiceIssues } from "./choice-issues.ts";
import type { FitPolicy } from "./policy.ts";

/**
 * Estimates that lie far from what the prior expects (a slip in finding a bone, a wrong unit): the
 * two-sided tail of the prior predictive distribution N(μ, τ² + u²). They are questioned, never altered.
 */
export function questionByPrior(
  beliefs: Beliefs,
  prior: Prior | undefined,
  policy: FitPolicy,
): readonly Issue[] {
  if (prior === undefined) return [];
  return beliefs.list.flatMap(({ dimension, estimate, priorMeanMm, priorSdMm }) => {
    if (estimate === undefined || priorMeanMm === undefined || priorSdMm === undefined) return [];
    const difference = estimate.mm - priorMeanMm;
    const score = Math.abs(difference) / Math.hypot(priorSdMm, estimate.uncertaintyMm);
    if (2 * normalUpperTail(score) >= policy.questionProbability) return [];
    return [
      createIssue(choiceIssues, "estimate-unlikely", {
        path: ["readings", dimension],
        received: estimate.readings.map((reading) => reading.text).join(", "),
        facts: {
          dimension: speakDimension(dimension),
          label: prior.label,
          readingMm: Math.round(estimate.mm),
          usualMm: Math.round(priorMeanMm),
          differenceMm: Math.round(Math.abs(difference)),
          side: difference < 0 ? "below" : "above",
        },
      }),
    ];
  });
}
