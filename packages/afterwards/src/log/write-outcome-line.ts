import { escaped, unwrap } from "@tapewise/outcome";
import type { OutcomeRow } from "./outcome-row.ts";
import { safeOutcomeRow } from "./safe-outcome-row.ts";

/**
 * Writes a row as one line of a log, without the line end. Fields stand in one order, whatever that of the row, and
 * what could break a line (line separators, control characters) is written as an escape.
 *
 * @throws {@link IssuesError} for a row that {@link safeOutcomeRow} finds errors in.
 *
 * @example
 * ```ts
 * import { writeOutcomeLine } from "@tapewise/afterwards";
 * writeOutcomeLine({ size: "M", outcome: "kept", at: "2026-05-04", product: { chart: "Doily 45" }, v: 1 });
 * // => '{"v":1,"at":"2026-05-04","product":{"chart":"Doily 45"},"size":"M","outcome":"kept"}'
 * ```
 */
export function writeOutcomeLine(row: OutcomeRow): string {
  return escaped(JSON.stringify(unwrap(safeOutcomeRow(row))));
}
