import type { SizeChart } from "@tapewise/charts";
import { type Person, type Recommendation, type RecommendOptions, recommend } from "@tapewise/fit";
import { failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { type CorrectedChart, correctChart } from "./correct-chart.ts";
import type { Evidence } from "./create-evidence.ts";
import { withChartDoubt } from "./with-chart-doubt.ts";

/** How evidence goes into a choice. */
export interface EvidenceOptions extends RecommendOptions {
  /**
   * `leave-out`: the ranges move to where they most likely are, and the person stays as read. `include`: the doubt
   * about the offset is also added to what is believed of the person ({@link withChartDoubt}), which makes every
   * probability of the corrected choice humbler.
   */
  readonly doubt: "include" | "leave-out";
}

/** A choice with and without what was learned from outcomes. */
export interface EvidencedChoice {
  /** By what the chart prints. */
  readonly printed: Recommendation;
  /** By the ranges as outcomes have them; the very same where nothing was learned. */
  readonly corrected: Recommendation;
  /** Whether what was learned changes the pick. */
  readonly isChanged: boolean;
  readonly correction: CorrectedChart;
}

/**
 * Chooses a size by the ranges as outcomes have them, beside the choice by what the chart prints: the pick, and
 * whether it is another one. Codes of failure and questions are those of `recommend`, of both choices; what both
 * say of the same place is told once, as the choice by the printed chart has it.
 *
 * @throws {@link InvalidArgumentError} as `recommend` does.
 *
 * @example
 * ```ts
 * import { createEvidence, recommendWithEvidence } from "@tapewise/afterwards";
 * import { parseChart } from "@tapewise/charts";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,43-48\n", { chart: "Doily 45", maker: "Gingham" });
 * const torso = parseEstimate({
 *   dimension: "torso-length",
 *   readings: [parseLength("435 mm")],
 *   error: { biasMm: 5, repeatMm: 0, resolutionMm: 0 },
 * });
 * const evidence = createEvidence();
 * for (let i = 0; i < 30; i += 1) {
 *   evidence.add({
 *     maker: "Gingham", product: "Doily 45", dimension: "torso-length",
 *     fromMm: 430, toMm: 480, side: "below", meanMm: 441, sdMm: 8,
 *   });
 * }
 * const outcome = recommendWithEvidence({ estimates: [torso] }, chart, evidence, { unit: "cm", doubt: "leave-out" });
 * outcome.ok && [outcome.value.printed.pick, outcome.value.corrected.pick]; // => ["M", "S"]
 * ```
 */
export function recommendWithEvidence(
  person: Person,
  chart: SizeChart,
  evidence: Evidence,
  options: EvidenceOptions,
): Outcome<EvidencedChoice> {
  const correction = correctChart(chart, evidence);
  const printed = recommend(person, chart, options);
  if (!printed.ok) return printed;
  const corrected =
    correction.corrections.length === 0
      ? printed
      : recommend(person, correction.chart, {
          ...options,
          ...(options.doubt === "include" ? { asSeenFrom: withChartDoubt(evidence) } : {}),
        });
  const issues = withoutRepeats([...printed.issues, ...corrected.issues]);
  if (!corrected.ok) return hasIssues(issues) ? failure(issues) : corrected;
  const value: EvidencedChoice = {
    printed: printed.value,
    corrected: corrected.value,
    isChanged: printed.value.pick !== corrected.value.pick,
    correction,
  };
  return success(value, issues);
}

/** Of issues that say the same of the same place, the first. */
function withoutRepeats(issues: readonly Issue[]): readonly Issue[] {
  const seen = new Set<string>();
  return issues.filter(({ code, path }) => {
    const key = JSON.stringify([code, path]);
    const isNew = !seen.has(key);
    seen.add(key);
    return isNew;
  });
}
