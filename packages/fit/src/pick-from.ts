import { type ChartDimension, type SizeChart, speakDimension } from "@tapewise/charts";
import { createIssue, failure, type Issue, type Outcome, success } from "@tapewise/outcome";
import { choiceIssues } from "./choice-issues.ts";
import type { Inquiry } from "./inquiry.ts";
import { judgeSizes } from "./judge-sizes.ts";
import { chartedDimensions, type JudgedDimension, judgeDimensions } from "./judged-dimensions.ts";
import type { Person } from "./person.ts";
import { type BeltPick, pickBelt } from "./pick-belt.ts";
import { rankSizes } from "./rank-sizes.ts";
import type { SizeFit } from "./recommendation.ts";
import { type Settled, settle } from "./settle.ts";

/** Which size is picked of a chart, before what that amounts to and what could be read further. */
export interface Picked {
  /** Every dimension that the chart states, for packs or for hip belts. */
  readonly charted: readonly ChartDimension[];
  /** Those that something is known of. */
  readonly known: readonly JudgedDimension[];
  /** Those of them that bind the size; the first is the main one. */
  readonly judged: readonly JudgedDimension[];
  readonly main: JudgedDimension;
  readonly fits: readonly SizeFit[];
  readonly unjudged: readonly string[];
  readonly settled: Settled;
  readonly belt?: BeltPick;
}

/** Picks a size of one chart. Codes of failure: `chart-without-sizes`, `chart-not-judged`. */
export function pickFrom(
  { person, beliefs, policy }: Pick<Inquiry, "person" | "beliefs" | "policy">,
  chart: SizeChart,
): Outcome<Picked> {
  const charted = chartedDimensions([...chart.sizes, ...chart.belts]);
  const ofSizes = chartedDimensions(chart.sizes);
  if (ofSizes.length === 0) return failure([withoutSizes(chart)]);
  const known = judgeDimensions(ofSizes, beliefs);
  // A belt that can be had in another size does not bind the size of the pack, unless nothing else does.
  const bound = choosesBelt(chart) ? known.filter(({ charted }) => !isAroundTheBelt(charted)) : known;
  const judged = bound.length > 0 ? bound : known;
  const [main] = judged;
  if (main === undefined) return failure([notJudged(chart, ofSizes, person)]);
  const { fits, unjudged } = judgeSizes(chart.sizes, judged, beliefs);
  const settled = settle(rankSizes(fits, main, policy), chart, person.build ?? [], main, policy);
  if (settled === undefined) return failure([notJudged(chart, ofSizes, person)]);
  const belt = pickBelt(chart, beliefs, policy);
  return success({
    charted,
    known: judgeDimensions(charted, beliefs),
    judged,
    main,
    fits,
    unjudged,
    settled,
    ...(belt === undefined ? {} : { belt }),
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

function notJudged(chart: SizeChart, charted: readonly ChartDimension[], person: Person): Issue {
  const read = person.estimates.map(({ dimension }) => speakDimension(dimension));
  return createIssue(choiceIssues, "chart-not-judged", {
    path: ["estimates"],
    received: read.length === 0 ? undefined : read.join(", "),
    facts: { chart: chart.chart, charted: charted.map(speakDimension).join(", ") },
  });
}
