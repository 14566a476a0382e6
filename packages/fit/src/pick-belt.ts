import type { SizeChart } from "@tapewise/charts";
import type { Beliefs } from "./belief.ts";
import { judgeSizes } from "./judge-sizes.ts";
import { chartedDimensions, judgeDimensions } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import { rankSizes } from "./rank-sizes.ts";
import type { BeltFit } from "./recommendation.ts";

/** The hip belt to take where belts are sized apart; `undefined` where they are not, or nothing of them is known. */
export function pickBelt(chart: SizeChart, beliefs: Beliefs, policy: FitPolicy): BeltFit | undefined {
  const judged = judgeDimensions(chartedDimensions(chart.belts), beliefs);
  const { fits } = judgeSizes(chart.belts, judged, beliefs);
  const best = rankSizes(fits, policy)[0];
  return best === undefined ? undefined : { pick: best.size, probability: best.probability, sizes: fits };
}
