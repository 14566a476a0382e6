import { appendFileSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import type { FileHandle } from "node:fs/promises";
import { hostname } from "node:os";
import { writeOutcomeLine } from "@tapewise/afterwards";
import { unwrap } from "@tapewise/outcome";
import { fileOutcomeStore } from "tapewise/log";
import { afterEach, expect, test, vi } from "vitest";
import { contentsOf, newLog, rowOf } from "./outcome-rows.ts";

/** What somebody else does between the look at the end of the log and the write; once. */
const meanwhile: { work: (() => void) | undefined; isFull: boolean } = { work: undefined, isFull: false };

vi.mock("node:fs/promises", async (load) => {
  const original = await load<typeof import("node:fs/promises")>();
  return {
    ...original,
    open: async (...args: Parameters<typeof original.open>): Promise<FileHandle> => {
      const file = await original.open(...args);
      const write = file.write.bind(file);
      file.write = ((...what: Parameters<typeof write>) => {
        const { work } = meanwhile;
        meanwhile.work = undefined;
        work?.();
        return meanwhile.isFull ? write(Buffer.from("{")) : write(...what);
      }) as typeof file.write;
      return file;
    },
  };
});

afterEach(() => {
  meanwhile.work = undefined;
  meanwhile.isFull = false;
});

const line = (id: string, person?: string): string =>
  `${writeOutcomeLine(rowOf({ id, ...(person === undefined ? {} : { person }) }))}\n`;

/** What `forget("p1")` does to the log of these tests, in two steps. */
const replace = (path: string): void => {
  writeFileSync(`${path}.copy`, line("b"));
  renameSync(`${path}.copy`, path);
};

test("a row that went into a log which was replaced at that moment is added to the new one, once", async () => {
  const path = newLog();
  writeFileSync(path, line("a", "p1") + line("b"));
  meanwhile.work = () => replace(path);
  unwrap(await fileOutcomeStore(path).append(rowOf({ id: "c" })));
  expect(readFileSync(path, "utf8")).toBe(line("b") + line("c"));
});

test("while somebody holds the log, a row that was just written is not called kept", async () => {
  const path = newLog();
  writeFileSync(path, line("a", "p1") + line("b"));
  const lock = JSON.stringify({ pid: process.pid, host: hostname(), nonce: "n" });
  meanwhile.work = () => {
    writeFileSync(`${path}.lock`, lock);
    setTimeout(() => {
      replace(path);
      rmSync(`${path}.lock`);
    }, 40);
  };
  unwrap(await fileOutcomeStore(path).append(rowOf({ id: "c" })));
  expect(readFileSync(path, "utf8")).toBe(line("b") + line("c"));
});

test("where it stays held, nobody can tell, and the outcome says so", async () => {
  const path = newLog();
  meanwhile.work = () => writeFileSync(`${path}.lock`, "");
  const outcome = await fileOutcomeStore(path, { patienceMs: 20 }).append(rowOf());
  expect(outcome.issues.map(({ code }) => code)).toEqual(["outcome-log-unsure"]);
});

test("a row that came to stand behind half a line is written again on a line of its own", async () => {
  const path = newLog();
  writeFileSync(path, line("a"));
  meanwhile.work = () => appendFileSync(path, '{"v":1,"at');
  unwrap(await fileOutcomeStore(path).append(rowOf({ id: "c" })));
  const { rows, codes } = await contentsOf(path);
  expect(rows.map(({ id }) => id)).toEqual(["a", "c"]);
  expect(codes).toEqual(["2: outcome-line-not-json"]);
});

test("a full disk that takes a part of the line only is reported, and the next row is whole", async () => {
  const path = newLog();
  writeFileSync(path, line("a"));
  meanwhile.isFull = true;
  const store = fileOutcomeStore(path);
  const [issue] = (await store.append(rowOf({ id: "b" }))).issues;
  expect(issue?.code).toBe("file-unwritable");
  expect(issue?.facts.reason).toBe(`only 1 of ${line("b").length} bytes were taken`);
  meanwhile.isFull = false;
  unwrap(await store.append(rowOf({ id: "c" })));
  expect((await contentsOf(path)).rows.map(({ id }) => id)).toEqual(["a", "c"]);
});
