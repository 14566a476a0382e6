import type { SizeChart } from "@tapewise/charts";
import { type Outcome, success } from "@tapewise/outcome";
import { chartedBelief } from "./charted-belief.ts";
import type { Choice } from "./choice.ts";
import { choose } from "./choose.ts";
import { explain } from "./explain.ts";
import type { Inquiry } from "./inquiry.ts";
import type { Recommendation } from "./recommendation.ts";

/** Chooses a size of one chart and puts the choice into words. Codes of failure: those of `choose`. */
export function answerInquiry(inquiry: Inquiry, chart: SizeChart): Outcome<Recommendation> {
  const choice = choose(inquiry, chart);
  return choice.ok ? success(report(choice.value, inquiry)) : choice;
}

function report(choice: Choice, inquiry: Inquiry): Recommendation {
  const { chart, settled, belt, outside, known } = choice;
  const { maker, product } = chart;
  const { pick } = settled;
  return {
    chart: chart.chart,
    ...(maker === undefined ? {} : { maker }),
    ...(product === undefined ? {} : { product }),
    verdict: choice.verdict,
    decidedBy: choice.decidedBy,
    pick: pick.size,
    probability: pick.probability,
    sizes: choice.fits,
    unjudgedSizes: choice.unjudged,
    ...(belt === undefined
      ? {}
      : { belt: { pick: belt.pick.size, probability: belt.pick.probability, sizes: belt.fits } }),
    ...(outside === undefined ? {} : { outside }),
    ...explain(choice, inquiry),
    beliefs: known.map(chartedBelief),
    estimates: inquiry.person.estimates,
    questions: inquiry.questions,
  };
}
