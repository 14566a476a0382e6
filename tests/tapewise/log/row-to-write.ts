import type { OutcomeRow } from "@tapewise/afterwards";

/**
 * The row number `k` of a writer. Long ones are among them, of several bytes a character, since a write is cut where
 * pages of memory end; every third row is of somebody who will be forgotten.
 */
export function rowToWrite(writer: string, k: number): OutcomeRow {
  return {
    v: 1,
    id: `${writer}-${k}`,
    at: "2026-05-04T10:00:00Z",
    person: k % 3 === 0 ? "gone" : `of ${writer}`,
    product: { maker: "ü€".repeat(1 + ((k * 37) % 100)), chart: "€".repeat(1 + ((k * 53) % 200)) },
    size: "M",
    outcome: "exchanged",
    exchangedFor: "€".repeat(1 + ((k * 71) % 200)),
  };
}
