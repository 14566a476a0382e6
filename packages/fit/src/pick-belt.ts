import type { SizeChart } from "@tapewise/charts";
import type { Beliefs } from "./belief.ts";
import { judgeSizes } from "./judge-sizes.ts";
import { chartedDimensions, type JudgedDimension, judgeDimensions } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import { rankSizes } from "./rank-sizes.ts";
import type { SizeFit } from "./recommendation.ts";

/** The pick among the sizes of a hip belt that is sized apart. */
export interface BeltPick {
  readonly judged: readonly JudgedDimension[];
  readonly fits: readonly SizeFit[];
  readonly pick: SizeFit;
}

/** The hip belt to take where belts are sized apart; `undefined` where they are not, or nothing of them is known. */
export function pickBelt(chart: SizeChart, beliefs: Beliefs, policy: FitPolicy): BeltPick | undefined {
  const judged = judgeDimensions(chartedDimensions(chart.belts), beliefs);
  const [main] = judged;
  if (main === undefined) return undefined;
  const { fits } = judgeSizes(chart.belts, judged, beliefs);
  const [pick] = rankSizes(fits, main, policy);
  return pick === undefined ? undefined : { judged, fits, pick };
}
