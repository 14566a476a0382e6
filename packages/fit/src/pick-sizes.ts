import type { SizeChart } from "@tapewise/charts";
import { failure, hasIssues, type Outcome, success } from "@tapewise/outcome";
import { chartedBelief } from "./charted-belief.ts";
import { checkPolicy } from "./check-policy.ts";
import { findRepeats } from "./find-repeats.ts";
import { formBeliefs } from "./form-beliefs.ts";
import type { Person, RecommendOptions } from "./person.ts";
import { pickFrom } from "./pick-from.ts";
import type { DimensionBelief } from "./recommendation.ts";

/** The sizes to take, and what they go by. */
export interface SizePick {
  readonly pick: string;
  /** The hip belt to take, where belts are sized apart and something is known of them. */
  readonly belt?: string;
  /** What is believed of each dimension of the chart that something is known of. */
  readonly beliefs: readonly DimensionBelief[];
}

/**
 * Only the size that {@link recommend} picks of one chart, without verdict, reasons and further readings: for a
 * program that has to name the size and to load little.
 *
 * Codes of failure: those of {@link recommend}.
 *
 * @throws {@link InvalidArgumentError} for whatever {@link recommend} refuses.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { pickSizes } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Demo" });
 * const torso = parseEstimate({ dimension: "torso-length", readings: [parseLength("45 cm")] });
 * const outcome = pickSizes({ estimates: [torso] }, chart);
 * outcome.ok && outcome.value.pick; // => "M"
 * ```
 */
export function pickSizes(
  person: Person,
  chart: SizeChart,
  options: Pick<RecommendOptions, "policy"> = {},
): Outcome<SizePick> {
  const policy = checkPolicy(options.policy);
  const repeats = findRepeats(person);
  if (hasIssues(repeats)) return failure(repeats);
  const beliefs = formBeliefs(person.estimates, person.prior);
  const picked = pickFrom({ person, beliefs, policy }, chart);
  if (!picked.ok) return picked;
  const { settled, belt, known } = picked.value;
  return success({
    pick: settled.pick.size,
    ...(belt === undefined ? {} : { belt: belt.pick.size }),
    beliefs: known.map(chartedBelief),
  });
}
