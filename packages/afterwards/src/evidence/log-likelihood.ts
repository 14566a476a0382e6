import type { EvidenceScale } from "./evidence-model.ts";
import { offsetNodes, widthNodes } from "./node-table.ts";
import type { SeenOutcome } from "./seen-outcome.ts";
import { normalCdfTable, tabledNormalCdf } from "./tabled-normal-cdf.ts";

/**
 * One unit of the sums, 2⁻²⁶: logarithms of likelihoods are whole numbers of it. Whole numbers up to 2⁵³ add up
 * and are taken away again without any rounding, so that neither order nor forgetting leaves a trace. For half a
 * unit an outcome to matter it would take millions of them.
 */
export const UNIT: number = 2 ** -26;
const UNITS = 2 ** 26;

/**
 * Adds `sign` times the logarithm of the likelihood of one outcome to a table, in units, at every node.
 *
 * A range from a to b with middle c and half-width h is taken as c + δ ± h·w. With Z the body plus what the person
 * puts up with, N(m, u² + s²), the outcome is `below` with Φ((a′ − m)/σ), `above` with Φ((m − b′)/σ) and `inside`
 * with the rest. With a chance of `slip` the report says nothing, all three being equally likely. An open end has
 * no width: its other end moves by δ alone.
 */
export function addLogLikelihood(
  table: Float64Array,
  seen: SeenOutcome,
  scale: EvidenceScale,
  slip: number,
  sign: 1 | -1,
): void {
  const { fromMm, toMm, meanMm, sdMm, side } = seen;
  const sigma = Math.sqrt(sdMm * sdMm + scale.toleranceMm * scale.toleranceMm);
  const isOpen = !(Number.isFinite(fromMm) && Number.isFinite(toMm));
  const half = isOpen ? 0 : (toMm - fromMm) / 2;
  const toLower = ((isOpen ? fromMm : fromMm + half) - meanMm) / sigma;
  const toUpper = (meanMm - (isOpen ? toMm : toMm - half)) / sigma;
  const perOffset = scale.reachMm / sigma;
  const floor = slip / 3;
  const told = 1 - slip;
  const cdf = normalCdfTable();
  for (let j = 0, at = 0; j < widthNodes.length; j += 1) {
    const reach = (half / sigma) * Math.exp((widthNodes[j] as number) * scale.logReach);
    for (let i = 0; i < offsetNodes.length; i += 1, at += 1) {
      const offset = (offsetNodes[i] as number) * perOffset;
      const below = side === "above" ? 0 : tabledNormalCdf(cdf, toLower - reach + offset);
      const above = side === "below" ? 0 : tabledNormalCdf(cdf, toUpper - reach - offset);
      const p = side === "inside" ? Math.max(0, 1 - below - above) : below + above;
      table[at] = (table[at] as number) + sign * Math.round(Math.log(told * p + floor) * UNITS);
    }
  }
}
