// A log of a hundred thousand outcomes, read from the disk and checked row by row, beside JSON.parse of the same lines
// that are in memory already.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type OutcomeRow, readOutcomes, safeParseOutcomeLine, writeOutcomeLine } from "@tapewise/afterwards";
import { createRandom } from "@tapewise/statistics";
import { fileOutcomeStore } from "tapewise/log";
import type { Suite } from "./suite.ts";

const COUNT = 100_000;

function rowOf(k: number, normal: number): OutcomeRow {
  const isExchanged = k % 5 === 0;
  return {
    v: 1,
    id: `row-${k}`,
    at: "2026-05-04T09:30:00Z",
    person: `member-${k % 30_000}`,
    product: { maker: "Invented Packs", chart: "Doily 45" },
    size: "M",
    outcome: isExchanged ? "exchanged" : "kept",
    ...(isExchanged ? { reason: "harness-too-short", exchangedFor: "L" } : {}),
    estimates: { "torso-length": { mm: 430 + 25 * normal, uncertaintyMm: 7.1, degreesOfFreedom: 12.5 } },
  };
}

/** The suite of the log. */
export const outcomeLogSuite: Suite = {
  name: "log",
  title: `A log of ${COUNT} outcomes`,
  async prepare() {
    const random = createRandom(1);
    const lines = Array.from({ length: COUNT }, (_, k) => writeOutcomeLine(rowOf(k, random.normal())));
    const folder = mkdtempSync(join(tmpdir(), "tapewise-bench-"));
    process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
    const path = join(folder, "outcomes.ndjson");
    writeFileSync(path, `${lines.join("\n")}\n`);
    const store = fileOutcomeStore(path);
    const { rows, issues } = await readOutcomes(store);
    if (rows.length !== COUNT || issues.length > 0) throw new Error("the log was not read as it was written");
    const megabytes = lines.reduce((sum, { length }) => sum + length + 1, 0) / 1e6;
    return {
      baseline: "JSON.parse of the lines",
      note: `${megabytes.toFixed(0)} MB of text.`,
      tasks: [
        { name: "JSON.parse of the lines", work: () => lines.map((line): unknown => JSON.parse(line)) },
        { name: "the lines read as rows", work: () => lines.map(safeParseOutcomeLine) },
        { name: "the log loaded from its file", work: () => readOutcomes(store) },
      ],
    };
  },
};
