import {
  appendFileSync,
  existsSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import type { FileHandle } from "node:fs/promises";
import { hostname } from "node:os";
import { basename, dirname } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { writeOutcomeLine } from "@tapewise/afterwards";
import { unwrap } from "@tapewise/outcome";
import { fileOutcomeStore } from "tapewise/log";
import { afterEach, expect, test, vi } from "vitest";
import { contentsOf, newLog, rowOf } from "./outcome-rows.ts";

/** What somebody else does between the look at the end of the log and the write; once. */
const meanwhile: {
  work: (() => void) | undefined;
  /** And what somebody else does when the line stands in the file and is not on the disk yet. */
  beforeSync: (() => Promise<void>) | undefined;
  isFull: boolean;
} = { work: undefined, beforeSync: undefined, isFull: false };

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
      const datasync = file.datasync.bind(file);
      file.datasync = async () => {
        const { beforeSync } = meanwhile;
        meanwhile.beforeSync = undefined;
        await beforeSync?.();
        await datasync();
      };
      return file;
    },
  };
});

afterEach(() => {
  meanwhile.work = undefined;
  meanwhile.beforeSync = undefined;
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

test("a row that stood in the log when its person was forgotten does not come back", async () => {
  const path = newLog();
  writeFileSync(path, line("a", "p1") + line("b"));
  let forgetting: Promise<unknown> = Promise.resolve();
  meanwhile.beforeSync = async () => {
    expect(readFileSync(path, "utf8")).toContain('"id":"c"');
    forgetting = fileOutcomeStore(path).forget("p1");
    await sleep(100);
  };
  unwrap(await fileOutcomeStore(path).append(rowOf({ id: "c", person: "p1" })));
  expect(await forgetting).toMatchObject({ ok: true, value: { rows: 2, unreadable: 0 } });
  expect(readFileSync(path, "utf8")).toBe(line("b"));
  expect(readdirSync(dirname(path))).toEqual([basename(path)]);
});

test("a writer that stops in the middle is waited for, and then named with the file that it left", async () => {
  const path = newLog();
  writeFileSync(path, line("a", "p1"));
  meanwhile.beforeSync = async () => {
    const [issue] = (await fileOutcomeStore(path, { patienceMs: 20 }).forget("p1")).issues;
    expect(issue?.code).toBe("outcome-log-busy");
    expect(issue?.facts.who).toBe(`process ${process.pid} on ${hostname()}`);
    expect(existsSync(String(issue?.facts.lock))).toBe(true);
  };
  unwrap(await fileOutcomeStore(path).append(rowOf({ id: "c" })));
  expect(readFileSync(path, "utf8")).toBe(line("a", "p1") + line("c"));
  expect(readdirSync(dirname(path))).toEqual([basename(path)]);
});

test("who was killed while writing holds up nobody who forgets, and what it left is taken away", async () => {
  const path = newLog();
  writeFileSync(path, line("a", "p1"));
  // Linux gives no process a number above 2^22 (proc(5), pid_max).
  writeFileSync(`${path}.lock.writer.4194305.1.0123456789ab.${hostname()}`, "");
  expect(unwrap(await fileOutcomeStore(path, { patienceMs: 20 }).forget("p1")).rows).toBe(1);
  expect(readdirSync(dirname(path))).toEqual([basename(path)]);
});

test("while somebody forgets, a writer waits, and leaves nothing behind where that takes too long", async () => {
  const path = newLog();
  writeFileSync(`${path}.lock`, JSON.stringify({ pid: process.pid, host: hostname(), nonce: "n" }));
  const [issue] = (await fileOutcomeStore(path, { patienceMs: 20 }).append(rowOf())).issues;
  expect(issue?.code).toBe("outcome-log-busy");
  expect(readdirSync(dirname(path))).toEqual([`${basename(path)}.lock`]);
  setTimeout(() => rmSync(`${path}.lock`), 40);
  unwrap(await fileOutcomeStore(path).append(rowOf({ id: "c" })));
  expect(readFileSync(path, "utf8")).toBe(line("c"));
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
