import type { SizeChart } from "@tapewise/charts";
import {
  createIssue,
  failure,
  hasIssues,
  type Issue,
  type Outcome,
  relocateIssue,
  success,
} from "@tapewise/outcome";
import { answerInquiry } from "./answer-inquiry.ts";
import { choiceIssues } from "./choice-issues.ts";
import type { Comparison, RankedChart } from "./comparison.ts";
import { comparisonTexts } from "./comparison-texts.ts";
import { lookFrom } from "./look-from.ts";
import { openInquiry } from "./open-inquiry.ts";
import type { Person, RecommendOptions } from "./person.ts";
import { type Entry, enter, rankEntries, whyBeforeNext } from "./rank-entries.ts";
import { writeReason } from "./write-reason.ts";

/**
 * Holds one person against many charts and ranks the packs, the best first.
 *
 * Packs that fit stand before those that do not, the likelier fit first; where hip belts are sized apart, the
 * belt counts in. Of both, where a length of the back was read, those that were judged by one stand before
 * those that were not: a probability that leaves the harness out promises less. Packs that fit and are
 * within the policy's `tieLoss` of the best that is left are close: among them goes first what was judged
 * by more of the readings, then the person's own cut, then a cut for all or none that is stated, and then, for
 * a first pack, an adjustable harness (common practice). The order of the charts does not matter.
 *
 * A chart that cannot be judged is left out of the ranking and reported with its position. Codes: those
 * of {@link recommend}, and `no-charts`.
 *
 * @throws {@link InvalidArgumentError} for whatever {@link recommend} refuses.
 *
 * @example
 * ```ts
 * import { parseChart } from "@tapewise/charts";
 * import { compare } from "@tapewise/fit";
 * import { parseEstimate } from "@tapewise/measurement";
 * import { parseLength } from "@tapewise/units";
 * const near = parseChart("size,torso-length (cm)\nM,42-48\n", { chart: "Near" });
 * const far = parseChart("size,torso-length (cm)\nM,50-55\n", { chart: "Far" });
 * const torso = parseEstimate({ dimension: "torso-length", readings: [parseLength("45 cm")] });
 * const outcome = compare({ estimates: [torso] }, [far, near], { unit: "cm" });
 * outcome.ok && outcome.value.ranked.map((one) => one.recommendation.chart); // => ["Near", "Far"]
 * ```
 */
export function compare(
  person: Person,
  charts: readonly SizeChart[],
  options: RecommendOptions,
): Outcome<Comparison> {
  const inquiry = openInquiry(person, options);
  if (charts.length === 0)
    return failure([createIssue(choiceIssues, "no-charts", { path: ["charts"], received: charts })]);
  if (!inquiry.ok) return inquiry;
  const { questions, policy, unit } = inquiry.value;

  const unjudged: Issue[] = [];
  const entries: Entry[] = [];
  charts.forEach((chart, index) => {
    const answer = answerInquiry(lookFrom(inquiry.value, chart, options), chart);
    if (answer.ok) entries.push(enter(chart, index, answer.value, inquiry.value));
    else unjudged.push(...answer.issues.map((issue) => relocateIssue(issue, ["charts", index])));
  });
  if (entries.length === 0 && hasIssues(unjudged)) return failure(unjudged);

  const order = rankEntries(entries, policy);
  const ranked = order.map((entry, index): RankedChart => {
    const next = order[index + 1];
    const base = { rank: index + 1, index: entry.index, recommendation: entry.recommendation };
    if (next === undefined) return base;
    return { ...base, beforeNext: writeReason(comparisonTexts, whyBeforeNext(entry, next, policy), unit) };
  });
  return success({ ranked }, [...questions, ...unjudged]);
}
