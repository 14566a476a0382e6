import { createIssue, type Issue, relocateIssue } from "@tapewise/outcome";
import { afterwardsIssues } from "../issues.ts";
import type { OutcomeRow } from "./outcome-row.ts";
import type { OutcomeStore } from "./outcome-store.ts";

/** Everything that a store holds. */
export interface ReadOutcomes {
  /** In the order in which they were added. */
  readonly rows: readonly OutcomeRow[];
  /** The number of the line of each row, from 1. */
  readonly lines: readonly number[];
  /** What could not be read and was passed over, and what was questioned, each with the number of its line. */
  readonly issues: readonly Issue[];
}

/**
 * Reads a whole store. A row whose `id` came before is not counted again, so that a caller who cannot tell whether an
 * append came through may repeat it.
 *
 * Codes: `outcome-id-repeated` as a warning, and whatever the store says of lines that it cannot read.
 *
 * @example
 * ```ts
 * import { memoryOutcomeStore, readOutcomes } from "@tapewise/afterwards";
 * const store = memoryOutcomeStore();
 * const row = { v: 1, at: "2026-05-04", product: { chart: "Doily 45" }, size: "M", outcome: "kept" } as const;
 * await store.append({ ...row, id: "a" });
 * await store.append({ ...row, id: "a" });
 * const { rows, issues } = await readOutcomes(store);
 * [rows.length, issues[0]?.code]; // => [1, "outcome-id-repeated"]
 * ```
 */
export async function readOutcomes(store: Pick<OutcomeStore, "read">): Promise<ReadOutcomes> {
  const rows: OutcomeRow[] = [];
  const lines: number[] = [];
  const issues: Issue[] = [];
  const ids = new Set<string>();
  for await (const { line, outcome } of store.read()) {
    for (const issue of outcome.issues) issues.push(relocateIssue(issue, [], { line, column: 1 }));
    if (!outcome.ok) continue;
    const { id } = outcome.value;
    if (id !== undefined && ids.has(id)) {
      const details = { path: ["id"], received: id, place: { line, column: 1 } };
      issues.push(createIssue(afterwardsIssues, "outcome-id-repeated", details));
      continue;
    }
    if (id !== undefined) ids.add(id);
    rows.push(outcome.value);
    lines.push(line);
  }
  return { rows, lines, issues };
}
