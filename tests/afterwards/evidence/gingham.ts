import type { Evidence, SeenOutcome } from "@tapewise/afterwards";
import { parseChart, type SizeChart } from "@tapewise/charts";

/** An invented chart. */
export const gingham: SizeChart = parseChart(
  "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-95\nM,43-48,80-105\nL,48+,90-120\n",
  { chart: "Doily 45", maker: "Gingham" },
);

/** An outcome of its size M, for a body believed to be in the middle of it. */
export const ofM: SeenOutcome = {
  maker: "Gingham",
  product: "Doily 45",
  dimension: "torso-length",
  fromMm: 430,
  toMm: 480,
  side: "inside",
  meanMm: 455,
  sdMm: 8,
};

/** Adds the same outcome several times. */
export function add(evidence: Evidence, seen: SeenOutcome, times = 1): void {
  for (let i = 0; i < times; i += 1) evidence.add(seen);
}
