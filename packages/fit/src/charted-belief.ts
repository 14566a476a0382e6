import type { JudgedDimension } from "./judged-dimensions.ts";
import type { DimensionBelief } from "./recommendation.ts";

/** What is believed of a dimension of a chart, as plain data. */
export function chartedBelief({ charted, belief }: JudgedDimension): DimensionBelief {
  return {
    dimension: charted,
    meanMm: belief.meanMm,
    sdMm: belief.sdMm,
    degreesOfFreedom: belief.degreesOfFreedom,
    from: belief.from,
  };
}
