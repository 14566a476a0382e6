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
import type { Comparison, RankedChart } from "./comparison.ts";
import { type ComparisonCode, comparisonTexts } from "./comparison-texts.ts";
import { fitIssues } from "./issues.ts";
import type { Person, RecommendOptions } from "./person.ts";
import { defaultPolicy, type FitPolicy } from "./policy.ts";
import { recommend } from "./recommend.ts";
import type { Recommendation } from "./recommendation.ts";
import { writeReason } from "./write-reason.ts";

/**
 * Holds one person against many charts and ranks the packs, the best first.
 *
 * The likelier fit stands first. Packs within the policy's `tieLoss` of the best that is left are close:
 * among them the person's own cut goes first, then, for a first pack, an adjustable harness (common
 * practice), then the smaller expected misfit. The order of the charts does not matter.
 *
 * A chart that cannot be judged is left out of the ranking and reported with its position. Codes: those
 * of {@link recommend}, and `no-charts`.
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
  if (charts.length === 0)
    return failure([createIssue(fitIssues, "no-charts", { path: ["charts"], received: charts })]);
  const issues: Issue[] = [];
  const entries: Entry[] = [];
  charts.forEach((chart, index) => {
    const outcome = recommend(person, chart, options);
    issues.push(...outcome.issues.map((issue) => relocateIssue(issue, ["charts", index])));
    if (outcome.ok) entries.push({ chart, recommendation: outcome.value });
  });
  if (entries.length === 0 && hasIssues(issues)) return failure(issues);
  const policy = options.policy ?? defaultPolicy;
  const order = rank(entries, person, policy);
  const ranked = order.map((entry, index): RankedChart => {
    const next = order[index + 1];
    const base = { rank: index + 1, recommendation: entry.recommendation };
    if (next === undefined) return base;
    const code = whyBefore(entry, next, person, policy);
    const facts = {
      chart: entry.recommendation.chart,
      other: next.recommendation.chart,
      chartProbability: entry.recommendation.probability,
      otherProbability: next.recommendation.probability,
    };
    return { ...base, beforeNext: writeReason(comparisonTexts, code, facts, options.unit) };
  });
  return success({ ranked }, issues);
}

interface Entry {
  readonly chart: SizeChart;
  readonly recommendation: Recommendation;
}

/** Takes the best of the close ones again and again, so that "close" needs no transitivity. */
function rank(entries: readonly Entry[], person: Person, policy: FitPolicy): readonly Entry[] {
  const left = entries.toSorted((a, b) => byFit(a, b) || byName(a, b));
  const order: Entry[] = [];
  while (left.length > 0) {
    const best = left[0];
    if (best === undefined) break;
    const floor = best.recommendation.probability - policy.tieLoss;
    const close = left.filter((entry) => entry.recommendation.probability >= floor);
    const chosen = close.reduce((a, b) => (preference(b, person) > preference(a, person) ? b : a));
    left.splice(left.indexOf(chosen), 1);
    order.push(chosen);
  }
  return order;
}

function preference(entry: Entry, person: Person): number {
  return 2 * Number(cutMatches(entry, person)) + Number(person.firstPack === true && adjusts(entry));
}

function cutMatches({ chart }: Entry, person: Person): boolean {
  return person.cut !== undefined && chart.cut === person.cut;
}

function adjusts({ chart, recommendation }: Entry): boolean {
  const size = chart.sizes.find((one) => one.name === recommendation.pick);
  return (size?.harness ?? chart.harness) === "adjustable";
}

function misfitOf({ recommendation }: Entry): number {
  return recommendation.sizes.find((fit) => fit.size === recommendation.pick)?.expectedMisfitMm ?? 0;
}

function byFit(a: Entry, b: Entry): number {
  return b.recommendation.probability - a.recommendation.probability || misfitOf(a) - misfitOf(b);
}

function byName(a: Entry, b: Entry): number {
  const name = ({ chart }: Entry) => [chart.chart, chart.maker ?? "", chart.product ?? ""].join("\n");
  if (name(a) === name(b)) return 0;
  return name(a) < name(b) ? -1 : 1;
}

function whyBefore(entry: Entry, next: Entry, person: Person, policy: FitPolicy): ComparisonCode {
  const lead = entry.recommendation.probability - next.recommendation.probability;
  if (lead > policy.tieLoss) return "likelier-fit";
  if (cutMatches(entry, person) && !cutMatches(next, person)) return "cut-matches";
  if (person.firstPack === true && adjusts(entry) && !adjusts(next)) return "adjustable-for-first-pack";
  if (lead > 0) return "likelier-fit";
  return misfitOf(entry) < misfitOf(next) ? "smaller-misfit" : "equal-fit";
}
