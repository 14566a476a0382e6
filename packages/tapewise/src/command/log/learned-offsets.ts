import { type ChartOffset, correctChart, expectedMove, type ReturnsRequest } from "@tapewise/afterwards";
import type { ChartDimension, SizeChart } from "@tapewise/charts";
import type { LearnedFromLog } from "./learn-from-log.ts";

/**
 * Where a log has the ranges of a chart, in every dimension in which there was something to learn from: over both
 * possibilities, that the charts are as printed, and that they are not.
 */
export function learnedOffsets(chart: SizeChart, { evidence }: LearnedFromLog): ReturnsRequest["offsets"] {
  const known: { [D in ChartDimension]?: ChartOffset } = {};
  for (const { dimension, learned } of correctChart(chart, evidence).known) {
    const { offsetMm, offsetSdMm } = expectedMove(learned);
    known[dimension] = { mm: offsetMm, uncertaintyMm: offsetSdMm };
  }
  return known;
}
