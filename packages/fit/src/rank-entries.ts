import type { SizeChart } from "@tapewise/charts";
import { type Comparable, compareFit } from "./compare-fit.ts";
import type { ComparisonCode } from "./comparison-texts.ts";
import type { Person } from "./person.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";
import type { Recommendation } from "./recommendation.ts";
import { writePercent } from "./write-percent.ts";

/** One pack that takes part in a comparison, with what it is compared by: size and belt together. */
export interface Entry extends Comparable {
  readonly recommendation: Recommendation;
  /** Settles the order of packs that are equal in all else. */
  readonly name: string;
  readonly isOfOwnCut: boolean;
  /** Whether this is a first pack and the picked size can be adjusted. */
  readonly forgives: boolean;
}

/** Makes ready what a pack is compared by. */
export function enter(chart: SizeChart, recommendation: Recommendation, person: Person): Entry {
  const { pick, probability, sizes, belt } = recommendation;
  const harness = chart.sizes.find((size) => size.name === pick)?.harness ?? chart.harness;
  const misfitOf = (fits: Recommendation["sizes"], name: string) =>
    fits.find((fit) => fit.size === name)?.expectedMisfitMm ?? 0;
  return {
    recommendation,
    probability: probability * (belt?.probability ?? 1),
    expectedMisfitMm: misfitOf(sizes, pick) + (belt === undefined ? 0 : misfitOf(belt.sizes, belt.pick)),
    name: [chart.chart, chart.maker ?? "", chart.product ?? ""].join("\n"),
    isOfOwnCut: person.cut !== undefined && chart.cut === person.cut,
    forgives: person.firstPack === true && harness === "adjustable",
  };
}

/** Takes the best of the close ones again and again, so that "close" needs no transitivity. */
export function rankEntries(entries: readonly Entry[], policy: FitPolicy): readonly Entry[] {
  const left = entries.toSorted((a, b) => compareFit(a, b, policy) || compareNames(a, b));
  const order: Entry[] = [];
  for (let best = left[0]; best !== undefined; best = left[0]) {
    const floor = floorOf(best, policy);
    const close = left.filter((entry) => entry.probability >= floor);
    const chosen = close.reduce((a, b) => (preference(b) > preference(a) ? b : a), best);
    left.splice(left.indexOf(chosen), 1);
    order.push(chosen);
  }
  return order;
}

/** What a pack must reach to be close to another: no reason beside fit speaks for one that does not fit. */
function floorOf(best: Entry, policy: FitPolicy): number {
  return Math.max(policy.fitProbability, best.probability - policy.tieLoss);
}

/** The cut goes before the harness. */
function preference({ isOfOwnCut, forgives }: Entry): number {
  return 2 * Number(isOfOwnCut) + Number(forgives);
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
  return { code: codeOf(entry, next, policy), facts };
}

function codeOf(entry: Entry, next: Entry, policy: FitPolicy): ComparisonCode {
  const best = entry.probability > next.probability ? entry : next;
  const floor = floorOf(best, policy);
  if (entry.probability >= floor && next.probability >= floor) {
    if (entry.isOfOwnCut && !next.isOfOwnCut) return "cut-matches";
    if (entry.isOfOwnCut === next.isOfOwnCut && entry.forgives && !next.forgives) {
      return "adjustable-for-first-pack";
    }
  }
  const isLikelier = entry.probability > next.probability;
  if (isLikelier && writePercent(entry.probability) !== writePercent(next.probability)) return "likelier-fit";
  return next.expectedMisfitMm - entry.expectedMisfitMm > NOTICEABLE_MM ? "smaller-misfit" : "equal-fit";
}
