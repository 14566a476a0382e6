import { success } from "@tapewise/outcome";
import type { OutcomeRow } from "./outcome-row.ts";
import type { OutcomeStore } from "./outcome-store.ts";
import { safeOutcomeRow } from "./safe-outcome-row.ts";

/**
 * Keeps outcomes in memory: for tests, for the browser, and as a pattern for a store of one's own.
 *
 * @example
 * ```ts
 * import { memoryOutcomeStore, readOutcomes } from "@tapewise/afterwards";
 * const store = memoryOutcomeStore();
 * const given = { v: 1, at: "2026-05-04", product: { chart: "Doily 45" }, size: "M", outcome: "kept" } as const;
 * await store.append({ ...given, person: "p1" });
 * await store.append({ ...given, person: "p2" });
 * await store.forget("p1");
 * (await readOutcomes(store)).rows.map(({ person }) => person); // => ["p2"]
 * ```
 */
export function memoryOutcomeStore(): OutcomeStore {
  let rows: OutcomeRow[] = [];
  return {
    async append(row) {
      const checked = safeOutcomeRow(row);
      if (checked.ok) rows.push(checked.value);
      return checked;
    },
    async *read() {
      // What is added while somebody reads is for the next reader.
      for (const [index, row] of rows.slice().entries()) yield { line: index + 1, outcome: success(row) };
    },
    async forget(person) {
      const left = rows.filter((row) => row.person !== person);
      const removed = rows.length - left.length;
      rows = left;
      return success({ rows: removed, unreadable: 0 });
    },
  };
}
