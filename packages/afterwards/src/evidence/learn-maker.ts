import type { ChartDimension } from "@tapewise/charts";
import type { Evidence } from "./create-evidence.ts";
import type { LearnedChart } from "./learned.ts";
import { chanceAsPrinted, makerPosterior } from "./posterior.ts";
import { scaleFor } from "./scale-for.ts";
import { summariseLocated } from "./summarise-located.ts";

/**
 * How the charts of a maker sit against what they print, on the whole: what its products have in common. A product of
 * which nobody has reported anything scatters about it; {@link learnProduct} says by how much.
 *
 * @example
 * ```ts
 * import { createEvidence, learnMaker } from "@tapewise/afterwards";
 * learnMaker(createEvidence(), "Gingham", "torso-length").offsetMm.sd.toFixed(0); // => "17"
 * ```
 */
export function learnMaker(evidence: Evidence, maker: string, dimension: ChartDimension): LearnedChart {
  const tables = evidence.tablesOf({ maker, product: "" }, dimension);
  const scale = scaleFor(evidence.model, dimension);
  const count = tables.reduce((sum, table) => sum + table.count, 0);
  const asPrinted = chanceAsPrinted(tables, scale, evidence.model.asPrintedProbability);
  return summariseLocated(makerPosterior(tables, scale), count, asPrinted);
}
