import type { OutcomeRow } from "@tapewise/afterwards";

/** A row of an invented crew; `more` says what is different. */
export function rowOf(more: Partial<OutcomeRow> = {}): OutcomeRow {
  return { v: 1, at: "2026-05-04", product: { chart: "Doily 45" }, size: "M", outcome: "kept", ...more };
}
