import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type OutcomeRow, readOutcomes } from "@tapewise/afterwards";
import { fileOutcomeStore } from "tapewise/log";
import { afterAll } from "vitest";

/** A row of an invented crew; `more` says what is different. */
export function rowOf(more: Partial<OutcomeRow> = {}): OutcomeRow {
  return {
    v: 1,
    at: "2026-05-04",
    product: { maker: "Invented Packs", chart: "Doily 45" },
    size: "M",
    outcome: "kept",
    ...more,
  };
}

/** A path in a folder of its own, that goes away after the tests of the file. */
export function newLog(): string {
  const folder = mkdtempSync(join(tmpdir(), "tapewise-log-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return join(folder, "outcomes.ndjson");
}

/** What a log holds, read as a program does. */
export async function contentsOf(
  path: string,
): Promise<{ rows: readonly OutcomeRow[]; codes: readonly string[] }> {
  const { rows, issues } = await readOutcomes(fileOutcomeStore(path));
  return { rows, codes: issues.map(({ code, place }) => `${place?.line}: ${code}`) };
}
