import { type ChartDimension, type SizeChart, speakDimension } from "@tapewise/charts";
import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import type { Choice } from "./choice.ts";
import { choiceIssues } from "./choice-issues.ts";
import { conclude } from "./conclude.ts";
import type { Inquiry } from "./inquiry.ts";
import { isDoubted } from "./is-doubted.ts";
import { judgeSizes } from "./judge-sizes.ts";
import { chartedDimensions, judgeDimensions, setsHarnessLength } from "./judged-dimensions.ts";
import { pickBelt } from "./pick-belt.ts";
import { planLook } from "./plan-look.ts";
import { rankSizes } from "./rank-sizes.ts";
import { settle } from "./settle.ts";
import { judge } from "./verdict.ts";

/**
 * Chooses a size of one chart. Codes of failure: `chart-without-sizes`, `chart-not-judged`.
 */
export function choose(inquiry: Inquiry, chart: SizeChart): Outcome<Choice> {
  const { person, beliefs, policy, questions } = inquiry;
  const charted = chartedDimensions([...chart.sizes, ...chart.belts]);
  const ofSizes = chartedDimensions(chart.sizes);
  if (ofSizes.length === 0) return failure([withoutSizes(chart)]);
  const known = judgeDimensions(ofSizes, beliefs);
  // A belt that can be had in another size does not bind the size of the pack, unless nothing else does.
  const bound = choosesBelt(chart) ? known.filter(({ charted }) => !isAroundTheBelt(charted)) : known;
  const judged = bound.length > 0 ? bound : known;
  const [main] = judged;
  if (main === undefined) return failure([notJudged(chart, ofSizes, inquiry)]);

  const { fits, unjudged } = judgeSizes(chart.sizes, judged, beliefs);
  const settled = settle(rankSizes(fits, main, policy), chart, person.build ?? [], main, policy);
  if (settled === undefined) return failure([notJudged(chart, ofSizes, inquiry)]);
  const { pick } = settled;
  const plain = judge(pick, fits, judged, policy);
  const belt = pickBelt(chart, beliefs, policy);
  const packLook = planLook({ fits, pick, hold: settled.isHeld ? policy.tieLoss : 0 }, judged, policy);
  const beltLook = belt === undefined ? undefined : planLook({ ...belt, hold: 0 }, belt.judged, policy);
  const look = packLook ?? beltLook;
  const isPackDoubted = isDoubted(judged, questions);
  const isBeltDoubted = belt !== undefined && isDoubted(belt.judged, questions);
  // A harness is made to a length: without one there is no verdict on a chart that states it.
  const lacksLength = charted.some(setsHarnessLength) && !known.some((one) => setsHarnessLength(one.charted));
  return success({
    chart,
    charted,
    known: judgeDimensions(charted, beliefs),
    judged,
    main,
    fits,
    unjudged,
    settled,
    plain,
    ...(belt === undefined ? {} : { belt }),
    ...(look === undefined ? {} : { look }),
    isDoubted: isPackDoubted || isBeltDoubted,
    ...conclude(
      { plain, isOpen: isPackDoubted || lacksLength, look: packLook },
      belt === undefined ? undefined : { plain: belt.plain, isOpen: isBeltDoubted, look: beltLook },
    ),
  });
}

function choosesBelt({ swappable, belts }: SizeChart): boolean {
  return swappable.includes("hip-belt") || belts.length > 0;
}

/** The belt is all of a pack that goes around the hips or the waist. */
function isAroundTheBelt(dimension: ChartDimension): boolean {
  return (
    dimension === "hip-belt-girth" ||
    dimension === "unstated-hip-girth" ||
    dimension === "hip-girth" ||
    dimension === "waist-girth"
  );
}

function withoutSizes(chart: SizeChart): Issue {
  return createIssue(choiceIssues, "chart-without-sizes", {
    path: ["chart"],
    received: chart.sizes,
    facts: { chart: chart.chart },
  });
}

function notJudged(chart: SizeChart, charted: readonly ChartDimension[], { person }: Inquiry): Issue {
  const read = person.estimates.map(({ dimension }) => speakDimension(dimension));
  return createIssue(choiceIssues, "chart-not-judged", {
    path: ["estimates"],
    received: read.length === 0 ? undefined : read.join(", "),
    facts: { chart: chart.chart, charted: charted.map(speakDimension).join(", ") },
  });
}
