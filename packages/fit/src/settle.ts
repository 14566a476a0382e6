import type { SizeChart } from "@tapewise/charts";
import type { JudgedDimension } from "./judged-dimensions.ts";
import type { BuildFeature } from "./person.ts";
import type { FitPolicy } from "./policy.ts";
import type { PlainReason } from "./reason.ts";
import type { SizeFit } from "./recommendation.ts";
import { type Tie, tieByBuild, tieByHarness } from "./tie.ts";
import { whyBefore } from "./why-before.ts";

/** The picked size and why it stands before the others. */
export interface Settled {
  readonly pick: SizeFit;
  /** The best by fit alone: the pick, unless a reason of build or of adjustability settled a tie. */
  readonly best: SizeFit;
  /** Whether such a reason speaks for the pick, which may be the best by its fit as well. */
  readonly isHeld: boolean;
  /** The best of the others that could have been taken. */
  readonly other?: SizeFit;
  readonly reasons: readonly PlainReason[];
}

/**
 * Picks a size from ranked ones and settles a tie between sizes that both fit, in this order: room on both
 * sides and the hip belt, which count in the probabilities and decide alone where these differ by more
 * than the policy's `tieLoss`; within it build (the longer harness), then a harness that can be
 * adjusted, then the order of the ranks: probability, expected misfit, room. What can be swapped goes for
 * all sizes of a chart, so it settles nothing between two of them; it decides which dimensions bind.
 */
export function settle(
  ranked: readonly SizeFit[],
  chart: SizeChart,
  build: readonly BuildFeature[],
  main: JudgedDimension,
  policy: FitPolicy,
): Settled | undefined {
  const [best, ...others] = ranked;
  if (best === undefined) return undefined;
  const floor = Math.max(policy.fitProbability, best.probability - policy.tieLoss);
  const close = ranked.filter((fit) => fit.probability >= floor);
  const tie = tieByBuild(close, build, main.charted) ?? tieByHarness(close, chart);
  if (tie !== undefined) {
    return { pick: tie.pick, best, isHeld: true, other: tie.other, reasons: [reasonOf(tie, best)] };
  }
  const [other] = others;
  const reasons = whyBefore(best, others, main, policy);
  return { pick: best, best, isHeld: false, ...(other === undefined ? {} : { other }), reasons };
}

function reasonOf({ code, pick, other, facts }: Tie, best: SizeFit): PlainReason {
  return {
    code,
    facts: {
      size: pick.size,
      other: other.size,
      ...facts,
      sizeProbability: pick.probability,
      otherProbability: other.probability,
      lossProbability: Math.max(0, best.probability - pick.probability),
    },
  };
}
