import type { ChartDimension } from "@tapewise/charts";
import type { Evidence } from "./create-evidence.ts";
import type { LearnedChart } from "./learned.ts";
import { makerPosterior } from "./posterior.ts";
import { scaleFor } from "./scale-for.ts";
import { summariseLocated } from "./summarise-located.ts";

/**
 * How the charts of a maker sit against what they print, on the whole: what its products have in common. A product of
 * which nobody has reported anything scatters about it; {@link learnProduct} says by how much.
 *
 * @example
 * ```ts
 * import { createEvidence, learnMaker } from "@tapewise/afterwards";
 * learnMaker(createEvidence(), "Gingham", "torso-length").offsetMm.sd.toFixed(0); // => "12"
 * ```
 */
export function learnMaker(evidence: Evidence, maker: string, dimension: ChartDimension): LearnedChart {
  const tables = evidence.tablesOf({ maker, product: "" }, dimension);
  const located = makerPosterior(tables, scaleFor(evidence.model, dimension));
  return summariseLocated(
    located,
    tables.reduce((sum, { count }) => sum + count, 0),
  );
}
