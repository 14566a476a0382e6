import { normalCdfInto } from "@tapewise/statistics";
import type { EvidenceScale } from "./evidence-model.ts";
import { NODES, offsetNodes, widthNodes } from "./node-table.ts";
import type { SeenOutcome } from "./seen-outcome.ts";

/**
 * One unit of the sums, 2⁻²⁶: logarithms of likelihoods are whole numbers of it. Whole numbers up to 2⁵³ add up
 * and are taken away again without any rounding, so that neither order nor forgetting leaves a trace. For half a
 * unit an outcome to matter it would take millions of them.
 */
export const UNIT: number = 2 ** -26;

const below = new Float64Array(NODES);
const above = new Float64Array(NODES);

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
  const lower = isOpen ? fromMm : fromMm + half;
  const upper = isOpen ? toMm : toMm - half;
  for (let j = 0, at = 0; j < widthNodes.length; j += 1) {
    const reach = half * Math.exp((widthNodes[j] as number) * scale.logReach);
    const toLower = lower - reach - meanMm;
    const toUpper = meanMm - (upper + reach);
    for (let i = 0; i < offsetNodes.length; i += 1, at += 1) {
      const offset = (offsetNodes[i] as number) * scale.reachMm;
      below[at] = (toLower + offset) / sigma;
      above[at] = (toUpper - offset) / sigma;
    }
  }
  if (side !== "above") normalCdfInto(below, below);
  if (side !== "below") normalCdfInto(above, above);
  const floor = slip / 3;
  for (let at = 0; at < NODES; at += 1) {
    const p =
      side === "inside"
        ? 1 - (below[at] as number) - (above[at] as number)
        : ((side === "below" ? below : above)[at] as number);
    const log = Math.log((1 - slip) * Math.max(0, p) + floor);
    table[at] = (table[at] as number) + sign * Math.round(log / UNIT);
  }
}
