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
  /** The best of the others that could have been taken. */
  readonly other?: SizeFit;
  readonly reasons: readonly PlainReason[];
}

/**
 * Picks a size from ranked ones and settles a tie between sizes that both fit. The best fit wins
 * unless another is within the policy's `tieLoss` of it and something else speaks for that one: build
 * first (the longer harness), then a harness that can be adjusted.
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
    return { pick: tie.pick, best, other: tie.other, reasons: [reasonOf(tie, best)] };
  }
  const [other] = others;
  const reasons = whyBefore(best, others, main, policy);
  return { pick: best, best, ...(other === undefined ? {} : { other }), reasons };
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
