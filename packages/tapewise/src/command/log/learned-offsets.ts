import { type ChartOffset, correctChart, type LearnedChart } from "@tapewise/afterwards";
import type { SizeChart } from "@tapewise/charts";
import { type DimensionId, dimensionIds } from "@tapewise/landmarks";
import type { LearnedFromLog } from "./learn-from-log.ts";

/** Where a log has the ranges of a chart, in every dimension in which there was something to learn from. */
export function learnedOffsets(
  chart: SizeChart,
  { evidence }: LearnedFromLog,
): { readonly [D in DimensionId]?: ChartOffset } {
  const known: { [D in DimensionId]?: ChartOffset } = {};
  for (const { dimension, learned } of correctChart(chart, evidence).known) {
    const id = dimensionIds.find((one) => one === dimension);
    if (id !== undefined) known[id] = offsetOf(learned);
  }
  return known;
}

/** Mean and standard deviation over both possibilities: that the charts are as printed, and that they are not. */
function offsetOf({ offsetMm: { mean, sd }, asPrintedProbability }: LearnedChart): ChartOffset {
  const chance = 1 - asPrintedProbability;
  return {
    mm: chance * mean,
    uncertaintyMm: Math.sqrt(chance * sd ** 2 + chance * asPrintedProbability * mean ** 2),
  };
}
