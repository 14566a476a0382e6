import { type DimensionId, dimensionIds, plausibleLimits } from "@tapewise/landmarks";
import { grubbsCriticalValue } from "@tapewise/measurement";
import { chiSquareQuantile, studentTQuantile } from "@tapewise/statistics";
import { MOST_READINGS } from "./scanned-person.ts";

/** The room that is left to the last digits of a figure. */
export const ROOM = 1e-9;

/** What limits readings before anything is asked about them, with a little room for the last digits. */
export interface QuickLimits {
  readonly lowest: Float64Array;
  readonly highest: Float64Array;
  /** For each number of readings: the greatest chi-square, t of a drift and statistic of Grubbs that pass. */
  readonly scatter: Float64Array;
  readonly drift: Float64Array;
  readonly grubbs: Float64Array;
}

/** Works them out. */
export function quickLimits(): QuickLimits {
  const adults = dimensionIds.map((id: DimensionId) => plausibleLimits(id, "adult"));
  const counts = Array.from({ length: MOST_READINGS + 1 }, (_, count) => count);
  return {
    lowest: Float64Array.from(adults, ({ from }) => from),
    highest: Float64Array.from(adults, ({ to }) => to),
    scatter: Float64Array.from(counts, (n) => (n < 2 ? 0 : chiSquareQuantile(0.99, n - 1) * (1 - ROOM))),
    drift: Float64Array.from(counts, (n) => (n < 4 ? 0 : -studentTQuantile(0.005, n - 2) * (1 - ROOM))),
    grubbs: Float64Array.from(counts, (n) => (n < 3 ? 0 : grubbsCriticalValue(n, 0.05) * (1 - ROOM))),
  };
}
