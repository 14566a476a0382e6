import type { ChartDimension, SizeChart } from "@tapewise/charts";
import { createIssue, failure, hasIssues, type Issue, type Outcome, success } from "@tapewise/outcome";
import { formBeliefs } from "./belief.ts";
import { explain } from "./explain.ts";
import { fitIssues } from "./issues.ts";
import { judgeSizes } from "./judge-sizes.ts";
import { chartedDimensions, judgeDimensions } from "./judged-dimensions.ts";
import type { Person, RecommendOptions } from "./person.ts";
import { pickBelt } from "./pick-belt.ts";
import { planLook } from "./plan-look.ts";
import { defaultPolicy } from "./policy.ts";
import { questionByPrior } from "./question-by-prior.ts";
import { rankSizes } from "./rank-sizes.ts";
import type { Recommendation } from "./recommendation.ts";
import { settle } from "./settle.ts";
import { judge } from "./verdict.ts";
import { speakDimension } from "./write-reason.ts";

/**
 * Holds one person against one chart: how every size fits, which one to take and why, how sure that
 * is, and what to do next.
 *
 * The probability of a size is the probability that each judged dimension of the body lies in the
 * size's interval, given readings and prior (Student's t margins, closed form). It is the probability
 * of lying in what the chart prints, not of comfort.
 *
 * Codes of failure: `chart-without-sizes`, `chart-not-judged`, `estimate-repeated`. The outcome's issues
 * hold the code `estimate-unlikely` where a reading is far from what the prior expects.
 *
 * @throws {@link InvalidArgumentError} for a prior whose means and covariances do not belong together.
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
  const policy = options.policy ?? defaultPolicy;
  const faults = checkPerson(person, chart);
  if (hasIssues(faults)) return failure(faults);

  const beliefs = formBeliefs(person.estimates, person.prior);
  const swapsBelt = chart.swappable.includes("hip-belt");
  const charted = chartedDimensions(chart.sizes);
  const known = judgeDimensions(charted, beliefs);
  // A belt that can be had in another size does not bind the size of the pack, unless nothing else does.
  const bound = swapsBelt ? known.filter((one) => !isBeltDimension(one.charted)) : known;
  const judged = bound.length > 0 ? bound : known;
  const main = judged[0];
  if (main === undefined) return failure([notJudged(chart, charted, person)]);

  const { fits, unjudged } = judgeSizes(chart.sizes, judged, beliefs);
  const ranked = rankSizes(fits, policy);
  const settled = settle(ranked, chart, person.build ?? [], main.charted, policy);
  if (settled === undefined) return failure([notJudged(chart, charted, person)]);

  const { pick } = settled;
  const plain = judge(pick, fits, judged, policy);
  const look = planLook(fits, pick, judged, policy);
  const isDoubtful = look !== undefined && look.code !== "measure-dimension";
  const belt = pickBelt(chart, beliefs, policy);
  const questions = questionByPrior(beliefs, person.prior, policy);
  const explained = explain({
    chart,
    person,
    beliefs,
    known,
    judged,
    charted,
    settled,
    plain,
    look,
    belt,
    questions,
    policy,
    unit: options.unit,
  });
  const recommendation: Recommendation = {
    chart: chart.chart,
    ...(chart.maker === undefined ? {} : { maker: chart.maker }),
    ...(chart.product === undefined ? {} : { product: chart.product }),
    verdict: isDoubtful ? "measure-again" : plain.verdict,
    pick: pick.size,
    probability: pick.probability,
    sizes: fits,
    unjudgedSizes: unjudged,
    ...(belt === undefined ? {} : { belt }),
    ...(plain.outside === undefined ? {} : { outside: plain.outside }),
    reasons: explained.reasons,
    next: explained.next,
    beliefs: known.map(({ charted: dimension, belief }) => ({
      dimension,
      meanMm: belief.meanMm,
      sdMm: belief.sdMm,
      degreesOfFreedom: belief.degreesOfFreedom,
      from: belief.from,
    })),
    estimates: person.estimates,
    questions,
  };
  return success(recommendation, questions);
}

function isBeltDimension(dimension: string): boolean {
  return dimension === "hip-belt-girth" || dimension === "unstated-hip-girth" || dimension === "hip-girth";
}

function checkPerson(person: Person, chart: SizeChart): readonly Issue[] {
  const issues: Issue[] = [];
  if (chart.sizes.length === 0) {
    issues.push(
      createIssue(fitIssues, "chart-without-sizes", {
        path: ["chart"],
        received: chart.sizes,
        facts: { chart: chart.chart },
      }),
    );
  }
  const seen = new Set<string>();
  person.estimates.forEach(({ dimension }, index) => {
    if (seen.has(dimension)) {
      issues.push(
        createIssue(fitIssues, "estimate-repeated", {
          path: ["estimates", index],
          received: dimension,
          facts: { dimension: speakDimension(dimension) },
        }),
      );
    }
    seen.add(dimension);
  });
  return issues;
}

function notJudged(chart: SizeChart, charted: readonly ChartDimension[], person: Person): Issue {
  return createIssue(fitIssues, "chart-not-judged", {
    path: ["estimates"],
    received: person.estimates.map((estimate) => estimate.dimension).join(", "),
    facts: { chart: chart.chart, charted: charted.map(speakDimension).join(", ") },
  });
}
