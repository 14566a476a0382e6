import type { SizeChart } from "@tapewise/charts";
import type { Beliefs } from "./belief.ts";
import type { PartChoice } from "./choice.ts";
import { judgeSizes } from "./judge-sizes.ts";
import { chartedDimensions, judgeDimensions } from "./judged-dimensions.ts";
import type { FitPolicy } from "./policy.ts";
import { rankSizes } from "./rank-sizes.ts";
import { judge } from "./verdict.ts";

/** The hip belt to take where belts are sized apart; `undefined` where they are not, or nothing of them is known. */
export function pickBelt(chart: SizeChart, beliefs: Beliefs, policy: FitPolicy): PartChoice | undefined {
  const judged = judgeDimensions(chartedDimensions(chart.belts), beliefs);
  const [main] = judged;
  if (main === undefined) return undefined;
  const { fits } = judgeSizes(chart.belts, judged, beliefs);
  const [pick] = rankSizes(fits, main, policy);
  return pick === undefined ? undefined : { judged, fits, pick, plain: judge(pick, fits, judged, policy) };
}
