// What somebody writes who keeps what became of packs in a file, and forgets who asks for it. Node only.
import type { OutcomeRow } from "@tapewise/afterwards";
import { fileOutcomeStore } from "tapewise/log";

const row: OutcomeRow = {
  v: 1,
  at: "2026-05-03",
  person: "q7f3",
  product: { chart: "Crew shelf" },
  size: "M",
  outcome: "kept",
};
const store = fileOutcomeStore("outcomes.ndjson");
const kept = await store.append(row);
const sizes: string[] = [];
for await (const { outcome } of store.read()) if (outcome.ok) sizes.push(outcome.value.size);
const forgotten = await store.forget("q7f3");

export const answer = { kept: kept.ok, sizes, forgotten: forgotten.ok && forgotten.value.rows };
