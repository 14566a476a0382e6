import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fc, test } from "@fast-check/vitest";
import {
  createEvidence,
  learnProduct,
  memoryOutcomeStore,
  type OutcomeRow,
  readOutcomes,
  safeOutcomeRow,
  safeParseOutcomeLine,
  safeSeeOutcome,
  writeOutcomeLine,
} from "@tapewise/afterwards";
import { parseChart } from "@tapewise/charts";
import { unwrap } from "@tapewise/outcome";
import { fileOutcomeStore } from "tapewise/log";
import { outcomeSchema } from "tapewise/schema";
import { afterAll, expect } from "vitest";
import { badLines, nearlyRows, outcomeRows } from "./afterwards-log-arbitraries.ts";

const folder = mkdtempSync(join(tmpdir(), "tapewise-laws-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test.prop([outcomeRows])("law: a row that is written is one line, and reads as it was", (row) => {
  const line = writeOutcomeLine(row);
  expect(line).not.toMatch(/[\n\r\u0085\u2028\u2029]/);
  expect(unwrap(safeParseOutcomeLine(line))).toEqual(row);
  expect(writeOutcomeLine(unwrap(safeParseOutcomeLine(line)))).toBe(line);
});

test.prop([fc.oneof(nearlyRows, fc.jsonValue())], { numRuns: 1000 })(
  "law: the published schema takes what the check takes",
  (value) => {
    expect(outcomeSchema.safeParse(value).success).toBe(safeOutcomeRow(value).ok);
  },
);

test.prop([nearlyRows])(
  "law: a check never throws, and what it takes it takes again without a word",
  (value) => {
    const outcome = safeOutcomeRow(value);
    expect(outcome.issues.some(({ severity }) => severity === "error")).toBe(!outcome.ok);
    if (!outcome.ok) return;
    const again = safeOutcomeRow(outcome.value);
    expect(again.ok && again.value).toEqual(outcome.value);
    // What is questioned of a row is questioned of it again.
    const questions = ["outcome-person-identifying", "outcome-estimate-implausible"];
    expect(again.issues.filter(({ code }) => !questions.includes(code))).toEqual([]);
  },
);

const logs = fc.array(fc.oneof({ weight: 4, arbitrary: outcomeRows }, { weight: 1, arbitrary: badLines }), {
  maxLength: 12,
});
const isRow = (entry: OutcomeRow | string): entry is OutcomeRow => typeof entry !== "string";
const people = fc.constantFrom("p1", "p2", "p10", "\u2028", "nobody");

test.prop([logs, people], { numRuns: 60 })(
  "law: what is read after somebody was forgotten is what is read of a log that they were never in",
  async (log, person) => {
    const [one, other] = [join(folder, "one.ndjson"), join(folder, "other.ndjson")];
    const write = (path: string, entries: readonly (OutcomeRow | string)[]): void =>
      writeFileSync(
        path,
        entries.map((entry) => `${isRow(entry) ? writeOutcomeLine(entry) : entry}\n`).join(""),
      );
    const others = log.filter((entry) => !isRow(entry) || entry.person !== person);
    write(one, log);
    write(other, others);
    const forgotten = unwrap(await fileOutcomeStore(one, { sync: false }).forget(person));
    expect(forgotten).toEqual({ rows: log.length - others.length, unreadable: 0 });
    expect(await readOutcomes(fileOutcomeStore(one))).toEqual(await readOutcomes(fileOutcomeStore(other)));

    const [inMemory, never] = [memoryOutcomeStore(), memoryOutcomeStore()];
    for (const row of log.filter(isRow)) await inMemory.append(row);
    for (const row of others.filter(isRow)) await never.append(row);
    await inMemory.forget(person);
    expect(await readOutcomes(inMemory)).toEqual(await readOutcomes(never));
  },
);

const chart = parseChart("size,torso-length (cm)\nS,38-43\nM,42-48\n", {
  chart: "Doily 45",
  maker: "Gingham",
});
const told = fc
  .record({
    person: fc.constantFrom("p1", "p2", "p3"),
    size: fc.constantFrom("S", "M"),
    mm: fc.double({ min: 380, max: 480, noNaN: true }),
    reason: fc.constantFrom(undefined, "harness-too-short" as const, "harness-too-long" as const),
  })
  .map(
    ({ person, size, mm, reason }): OutcomeRow => ({
      v: 1,
      at: "2026-05-04",
      person,
      product: { maker: "Gingham", chart: "Doily 45" },
      size,
      estimates: { "torso-length": { mm, uncertaintyMm: 8 } },
      ...(reason === undefined ? { outcome: "kept" } : { outcome: "exchanged", reason }),
    }),
  );

test.prop([fc.array(told, { maxLength: 15 })], { numRuns: 25 })(
  "law: what is learned after somebody was forgotten is, bit for bit, what is learned without them",
  async (rows) => {
    const learn = (from: readonly OutcomeRow[]) => {
      const evidence = createEvidence();
      for (const row of from) for (const seen of unwrap(safeSeeOutcome(row, chart))) evidence.add(seen);
      return learnProduct(evidence, { maker: "Gingham", product: "Doily 45" }, "torso-length");
    };
    const path = join(folder, "learned.ndjson");
    writeFileSync(path, rows.map((row) => `${writeOutcomeLine(row)}\n`).join(""));
    const store = fileOutcomeStore(path, { sync: false });
    unwrap(await store.forget("p1"));
    const left = (await readOutcomes(store)).rows;
    expect(learn(left)).toStrictEqual(learn(rows.filter(({ person }) => person !== "p1")));
  },
);
