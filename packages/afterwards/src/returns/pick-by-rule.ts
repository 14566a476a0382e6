import type { SizeChart } from "@tapewise/charts";
import { defaultPolicy, recommend } from "@tapewise/fit";
import { parseEstimate, safeReadReadings } from "@tapewise/measurement";
import type { JudgedLength } from "./fitting.ts";

/** Further readings would change the advice and not the pick, and looking for them takes time. */
const POLICY = { ...defaultPolicy, mostFurtherReadings: 0 };

/**
 * The place of the size that `recommend` gives to somebody with these estimates; -1 where it gives none. Estimates
 * are normal, and nothing else is known of the person.
 */
export function pickByRule(
  chart: SizeChart,
  judged: readonly JudgedLength[],
  estimatesMm: readonly number[],
): number {
  const estimates = judged.flatMap(({ dimension, uncertaintyMm }, place) => {
    const mm = estimatesMm[place] ?? 0;
    const read = mm > 0 ? safeReadReadings(dimension, [`${mm.toFixed(6)} mm`]) : undefined;
    if (read?.ok !== true) return [];
    const error = { biasMm: uncertaintyMm, repeatMm: 0, resolutionMm: 0 };
    return [parseEstimate({ dimension, readings: read.value, error })];
  });
  const outcome = recommend({ estimates }, chart, { unit: "cm", policy: POLICY });
  return outcome.ok ? chart.sizes.findIndex(({ name }) => name === outcome.value.pick) : -1;
}
