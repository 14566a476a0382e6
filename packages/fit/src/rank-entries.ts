import type { SizeChart } from "@tapewise/charts";
import { type Comparable, compareFit } from "./compare-fit.ts";
import type { ComparisonCode } from "./comparison-texts.ts";
import type { Inquiry } from "./inquiry.ts";
import { chartedDimensions, judgeDimensions, setsHarnessLength } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import { rankCut } from "./rank-cut.ts";
import type { PlainReason } from "./reason.ts";
import type { Recommendation } from "./recommendation.ts";
import { writePercent } from "./write-percent.ts";

/** One pack that takes part in a comparison, with what it is compared by: size and belt together. */
export interface Entry extends Comparable {
  readonly recommendation: Recommendation;
  /** The position of the chart in the caller's list. */
  readonly index: number;
  /** Whether a length of the back was read, and this pack was not judged by any. */
  readonly lacksLength: boolean;
  /** How many of the readings it was judged by. */
  readonly count: number;
  /** Settles the order of packs that are equal in all else. */
  readonly name: string;
  /** 2 for the person's own cut, 0 for that of other bodies, 1 for anything between. */
  readonly cutRank: number;
  /** Whether this is a first pack and the picked size can be adjusted. */
  readonly forgives: boolean;
}

/** Makes ready what a pack is compared by. */
export function enter(
  chart: SizeChart,
  index: number,
  recommendation: Recommendation,
  { person, beliefs }: Inquiry,
): Entry {
  const { pick, probability, sizes, belt } = recommendation;
  const harness = chart.sizes.find((size) => size.name === pick)?.harness ?? chart.harness;
  const misfitOf = (fits: Recommendation["sizes"], name: string) =>
    fits.find((fit) => fit.size === name)?.expectedMisfitMm ?? 0;
  const known = judgeDimensions(chartedDimensions([...chart.sizes, ...chart.belts]), beliefs);
  const read = known.filter(({ belief }) => belief.from !== "prior").map(({ belief }) => belief.dimension);
  const isLengthRead = person.estimates.some(({ dimension }) => setsHarnessLength(dimension));
  return {
    recommendation,
    index,
    lacksLength: isLengthRead && !known.some(({ charted }) => setsHarnessLength(charted)),
    count: new Set(read).size,
    probability: probability * (belt?.probability ?? 1),
    expectedMisfitMm: misfitOf(sizes, pick) + (belt === undefined ? 0 : misfitOf(belt.sizes, belt.pick)),
    name: [chart.chart, chart.maker ?? "", chart.product ?? ""].join("\n"),
    cutRank: rankCut(person.cut, chart.cut),
    forgives: person.firstPack === true && harness === "adjustable",
  };
}

/** Takes the best of the close ones again and again, so that "close" needs no transitivity. */
export function rankEntries(entries: readonly Entry[], policy: FitPolicy): readonly Entry[] {
  const left = entries.toSorted(
    (a, b) => tierOf(a, policy) - tierOf(b, policy) || compareFit(a, b, policy) || compareNames(a, b),
  );
  const order: Entry[] = [];
  for (let best = left[0]; best !== undefined; best = left[0]) {
    const floor = floorOf(best, policy);
    const tier = tierOf(best, policy);
    const close = left.filter((entry) => entry.probability >= floor && tierOf(entry, policy) === tier);
    const chosen = close.reduce((a, b) => (prefer(a, b) > 0 ? b : a), best);
    left.splice(left.indexOf(chosen), 1);
    order.push(chosen);
  }
  return order;
}

/** What a pack must reach to be close to another: no reason beside fit speaks for one that does not fit. */
function floorOf(best: Entry, policy: FitPolicy): number {
  return Math.max(policy.fitProbability, best.probability - policy.tieLoss);
}

/** 0 and 1 for packs that fit, 2 and 3 for those that do not; the first of each was judged by a length of the back. */
function tierOf({ probability, lacksLength }: Entry, policy: FitPolicy): number {
  return (probability >= policy.fitProbability ? 0 : 2) + Number(lacksLength);
}

/** Above 0 where `b` goes first: what was judged by more, then the cut, then the harness. */
function prefer(a: Entry, b: Entry): number {
  return b.count - a.count || b.cutRank - a.cutRank || Number(b.forgives) - Number(a.forgives);
}

function compareNames(a: Entry, b: Entry): number {
  if (a.name === b.name) return 0;
  return a.name < b.name ? -1 : 1;
}

/** A difference of expected misfits in mm that somebody could notice. */
const NOTICEABLE_MM = 0.5;

/** Why one pack stands before the next. */
export function whyBeforeNext(entry: Entry, next: Entry, policy: FitPolicy): PlainReason<ComparisonCode> {
  const facts = {
    chart: entry.recommendation.chart,
    other: next.recommendation.chart,
    chartProbability: entry.probability,
    otherProbability: next.probability,
  };
  const code = codeOf(entry, next, policy);
  const counts = code === "judged-by-more" ? { count: entry.count, otherCount: next.count } : {};
  return { code, facts: { ...facts, ...counts } };
}

function codeOf(entry: Entry, next: Entry, policy: FitPolicy): ComparisonCode {
  const isSameTier = tierOf(entry, policy) === tierOf(next, policy);
  if (next.lacksLength && tierOf(entry, policy) + 1 === tierOf(next, policy)) return "harness-length-judged";
  const best = entry.probability > next.probability ? entry : next;
  const floor = floorOf(best, policy);
  if (isSameTier && entry.probability >= floor && next.probability >= floor && prefer(entry, next) < 0) {
    if (entry.count > next.count) return "judged-by-more";
    if (entry.cutRank > next.cutRank) return entry.cutRank === 2 ? "cut-matches" : "other-cut";
    return "adjustable-for-first-pack";
  }
  const isLikelier = entry.probability > next.probability;
  if (isLikelier && writePercent(entry.probability) !== writePercent(next.probability)) return "likelier-fit";
  return next.expectedMisfitMm - entry.expectedMisfitMm > NOTICEABLE_MM ? "smaller-misfit" : "equal-fit";
}
