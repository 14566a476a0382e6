import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { Facts } from "@tapewise/outcome";
import type { BuildFeature } from "./person.ts";
import type { FitPolicy } from "./policy.ts";
import type { ReasonCode } from "./reasons.ts";
import type { SizeFit } from "./recommendation.ts";

/** A reason before its sentence is written. */
export interface PlainReason<Code extends string = ReasonCode> {
  readonly code: Code;
  readonly facts: Facts;
}

/** The picked size and why it stands before the others. */
export interface Settled {
  readonly pick: SizeFit;
  /** The best of the others that could have been taken. */
  readonly other?: SizeFit;
  readonly reasons: readonly PlainReason[];
}

/**
 * Picks a size from ranked ones and settles a tie between sizes that both fit. The likeliest size
 * wins unless another is within the policy's `tieLoss` of it and something else speaks for that one:
 * build first (the longer harness), then a harness that can be adjusted.
 */
export function settle(
  ranked: readonly SizeFit[],
  chart: SizeChart,
  build: readonly BuildFeature[],
  main: ChartDimension,
  policy: FitPolicy,
): Settled | undefined {
  const [best, ...others] = ranked;
  if (best === undefined) return undefined;
  const close = ranked.filter(
    (fit) => fit.probability >= policy.fitProbability && fit.probability >= best.probability - policy.tieLoss,
  );
  const tie =
    close.length > 1 ? (byBuild(close, best, build, main) ?? byHarness(close, best, chart)) : undefined;
  if (tie !== undefined) return tie;

  const fitting = others.filter((fit) => probabilityOf(fit, main) >= policy.fitProbability);
  const other = fitting.toSorted((a, b) => probabilityOf(b, main) - probabilityOf(a, main))[0];
  if (other === undefined || probabilityOf(best, main) < policy.fitProbability) {
    return { pick: best, ...(others[0] === undefined ? {} : { other: others[0] }), reasons: [] };
  }
  return { pick: best, other, reasons: [whyBefore(best, other, main)] };
}

/** Common practice: broad shoulders, a large chest or a muscular back take up length, so the longer harness suits. */
function byBuild(
  close: readonly SizeFit[],
  best: SizeFit,
  build: readonly BuildFeature[],
  main: ChartDimension,
): Settled | undefined {
  if (build.length === 0) return undefined;
  const longest = close.reduce((a, b) => (isLonger(b, a, main) ? b : a));
  const rival = close.find((fit) => fit !== longest);
  if (rival === undefined || !isLonger(longest, rival, main)) return undefined;
  return {
    pick: longest,
    other: rival,
    reasons: [
      {
        code: "build-takes-longer",
        facts: {
          size: longest.size,
          other: rival.size,
          build: build.map((feature) => feature.replaceAll("-", " ")).join(" and "),
          lossProbability: Math.max(0, best.probability - longest.probability),
        },
      },
    ],
  };
}

function byHarness(close: readonly SizeFit[], best: SizeFit, chart: SizeChart): Settled | undefined {
  const harnessOf = (fit: SizeFit) =>
    chart.sizes.find((size) => size.name === fit.size)?.harness ?? chart.harness;
  if (harnessOf(best) !== "fixed") return undefined;
  const pick = close.find((fit) => harnessOf(fit) === "adjustable");
  if (pick === undefined) return undefined;
  return {
    pick,
    other: best,
    reasons: [
      {
        code: "harness-adjusts",
        facts: {
          size: pick.size,
          other: best.size,
          lossProbability: Math.max(0, best.probability - pick.probability),
        },
      },
    ],
  };
}

function whyBefore(pick: SizeFit, other: SizeFit, main: ChartDimension): PlainReason {
  const byMain = probabilityOf(pick, main) - probabilityOf(other, main);
  const decisive = pick.dimensions
    .filter((one) => one.dimension !== main)
    .map((one) => ({
      dimension: one.dimension,
      own: one.probability,
      others: probabilityOf(other, one.dimension),
    }))
    .toSorted((a, b) => b.own - b.others - (a.own - a.others))[0];
  if (decisive !== undefined && decisive.own - decisive.others > Math.max(byMain, 0)) {
    return {
      code: "hip-belt-decides",
      facts: {
        size: pick.size,
        other: other.size,
        dimension: decisive.dimension,
        sizeProbability: decisive.own,
        otherProbability: decisive.others,
      },
    };
  }
  return { code: "room-on-both-sides", facts: { size: pick.size, other: other.size } };
}

/** A size that says nothing of a dimension sets no bound there. */
function probabilityOf(fit: SizeFit, dimension: ChartDimension): number {
  return fit.dimensions.find((one) => one.dimension === dimension)?.probability ?? 1;
}

function isLonger(a: SizeFit, b: SizeFit, main: ChartDimension): boolean {
  const rangeA = a.dimensions.find((one) => one.dimension === main)?.range.interval;
  const rangeB = b.dimensions.find((one) => one.dimension === main)?.range.interval;
  if (rangeA === undefined || rangeB === undefined) return false;
  return rangeA.to > rangeB.to || (rangeA.to === rangeB.to && rangeA.from > rangeB.from);
}
