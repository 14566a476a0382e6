import type { SizeChart } from "@tapewise/charts";
import { type Outcome, success } from "@tapewise/outcome";
import { answerInquiry } from "./answer-inquiry.ts";
import { lookFrom } from "./look-from.ts";
import { openInquiry } from "./open-inquiry.ts";
import type { Person, RecommendOptions } from "./person.ts";
import type { Recommendation } from "./recommendation.ts";

/**
 * Holds one person against one chart: how every size fits, which one to take and why, how sure that
 * is, and what to do next.
 *
 * The probability of a size is the probability that each judged dimension of the body lies in the
 * size's interval, given readings and prior (Student's t margins, closed form). It is the probability
 * of lying in what the chart prints, not of comfort.
 *
 * Codes of failure: `chart-without-sizes`, `chart-not-judged`, `estimate-repeated`. The outcome's issues
 * hold the code `estimate-unlikely` where a reading is far from what the prior expects, and
 * `estimate-implausible` where it is beyond what people have. Neither alters it, but where the size hangs on
 * it the verdict is `measure-again`.
 *
 * @throws {@link InvalidArgumentError} for a unit other than cm and in, for a policy whose figures are out of
 * bounds, and for whatever {@link formBeliefs} refuses.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { recommend } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", { chart: "Demo" });
 * const torso = parseEstimate({
 *   dimension: "torso-length",
 *   readings: [parseLength("45 cm")],
 *   error: { biasMm: 5, repeatMm: 0, resolutionMm: 0 },
 * });
 * const outcome = recommend({ estimates: [torso] }, chart, { unit: "cm" });
 * outcome.ok && [outcome.value.pick, outcome.value.verdict]; // => ["M", "fits"]
 * ```
 */
export function recommend(
  person: Person,
  chart: SizeChart,
  options: RecommendOptions,
): Outcome<Recommendation> {
  const inquiry = openInquiry(person, options);
  if (!inquiry.ok) return inquiry;
  const answer = answerInquiry(lookFrom(inquiry.value, chart, options), chart);
  return answer.ok ? success(answer.value, inquiry.value.questions) : answer;
}
