import { randomUUID } from "node:crypto";
import { realpath } from "node:fs/promises";
import {
  type Forgotten,
  type OutcomeRow,
  type OutcomeStore,
  safeOutcomeRow,
  writeOutcomeLine,
} from "@tapewise/afterwards";
import {
  createIssue,
  failure,
  InvalidArgumentError,
  type Issue,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import { announceWriter, waitForWriters } from "./announce.ts";
import { appendLine, findLine } from "./append-line.ts";
import { forgetLines } from "./forget-lines.ts";
import { codeOf, type Holder, isSystemError } from "./holder.ts";
import { lockOf, takeLock } from "./lock.ts";
import { readLines } from "./read-lines.ts";

/** How a log is kept in a file. */
export interface FileOutcomeStoreOptions {
  /**
   * Whether an append resolves only when the row is on the disk, so that it outlasts a loss of power (`fdatasync`);
   * true where it is left out. Without it a row outlasts the end of the process, and not that of the machine.
   */
  readonly sync?: boolean;
  /** How long to wait, in milliseconds, for another process that rewrites the log; 10,000 where it is left out. */
  readonly patienceMs?: number;
}

const PATIENCE_MS = 10_000;

/**
 * Keeps outcomes in a file of one JSON object a line, which any number of processes of one machine may add to at the
 * same time.
 *
 * - **Adding** is one write of a whole line to the end of the file (`O_APPEND`); writers do not wait for each other.
 *   Whoever is killed holds up nobody, and at most the line that was being written is lost. Half a line that was left is
 *   never joined to a good one: every line is read back, and written again where it did not come to stand by itself.
 * - **Forgetting** rewrites the file beside the log and renames it into place, under a lock that only those who forget
 *   take. A writer announces itself by a file beside the log, and forgetting waits until none is at it, so that a row
 *   that was forgotten never comes back. Locks and announcements of those who died are taken away.
 * - **Reading** passes over what it cannot read, reports it with the number of its line, and leaves it in the file.
 *
 * A row without an `id` is given one, so that no row is mistaken for another. The file has to lie in a folder that may
 * be written to, on a local file system whose processes see each other: over a network neither appends nor locks are to be relied on. A row that is
 * forgotten is gone from the file; the disk, backups and copies are beyond what a library can reach.
 *
 * Why a file and not an embedded database: rows are only ever added, read from the first to the last, and seldom
 * removed. A log of a hundred thousand is read in a few times what `JSON.parse` takes for its lines, and it stays a text
 * that people can open, mend and take elsewhere. SQLite would bring a lock and a journal that are better proven than
 * any of our own, and an index, by which somebody is forgotten at once and not in the time that it takes to read the
 * log. It costs a package that is compiled at install or brought as a binary (`better-sqlite3`), or a module that came
 * to Node with version 22 (`node:sqlite`), where the library runs from version 20 on; durable appends
 * are no faster with it. Whoever has such a database, or many machines, keeps the rows there: `OutcomeStore` is three
 * functions.
 *
 * Codes of `append` and `forget`: those of `safeOutcomeRow`, `file-unwritable` and `outcome-log-busy`, and then nothing
 * was changed. `read` throws what it cannot open the file for.
 * Whatever is no error of the operating system is thrown on as it is.
 *
 * @throws {@link InvalidArgumentError} for an empty path, or a patience that is no number from 0 up.
 *
 * @example
 * ```ts
 * import { fileOutcomeStore } from "tapewise/log";
 * const store = fileOutcomeStore("no-such-folder/outcomes.ndjson");
 * const row = { v: 1, at: "2026-05-04", product: { chart: "Doily 45" }, size: "M", outcome: "kept" } as const;
 * (await store.append(row)).issues[0]?.code; // => "file-unwritable"
 * ```
 */
export function fileOutcomeStore(path: string, options: FileOutcomeStoreOptions = {}): OutcomeStore {
  const { sync: isSynced = true, patienceMs = PATIENCE_MS } = options;
  if (path === "") throw new InvalidArgumentError("path", path, "the path of a file");
  if (!(patienceMs >= 0)) throw new InvalidArgumentError("patienceMs", patienceMs, "0 or more");
  let last: Promise<unknown> = Promise.resolve();
  /** One after the other, so that rows stand in the order in which they were given. */
  const inTurn = <T>(work: () => Promise<Outcome<T>>): Promise<Outcome<T>> => {
    const next = last.then(() => reported(path, work));
    // What failed for one caller does not fail for those who come after.
    last = next.catch(() => undefined);
    return next;
  };
  return {
    append: (row) => inTurn(async () => append(await realPath(path), row, { isSynced, patienceMs })),
    read: () => readLines(path),
    forget: (person) => inTurn(async () => forget(await realPath(path), person, patienceMs)),
  };
}

/** Where a link leads to, so that all who use the log look at the same lock. */
async function realPath(path: string): Promise<string> {
  try {
    return await realpath(path);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return path;
    throw error;
  }
}

async function append(
  path: string,
  row: OutcomeRow,
  how: { readonly isSynced: boolean; readonly patienceMs: number },
): Promise<Outcome<OutcomeRow>> {
  const checked = safeOutcomeRow(row);
  if (!checked.ok) return checked;
  const kept: OutcomeRow = { ...checked.value, id: checked.value.id ?? randomUUID() };
  const line = writeOutcomeLine(kept);
  const announced = await announceWriter(path, how.patienceMs);
  if ("by" in announced) return failure([busyIssue(path, announced.by, how.patienceMs, lockOf(path))]);
  try {
    for (;;) {
      const attempt = await appendLine(path, line, how);
      switch (attempt.kind) {
        case "there":
          return success(kept, checked.issues);
        case "replaced":
          if (await findLine(path, line)) return success(kept, checked.issues);
          break;
        case "cut-short":
          return failure([unwritable(path, `only ${attempt.written} of ${attempt.of} bytes were taken`)]);
      }
    }
  } finally {
    await announced.release();
  }
}

async function forget(path: string, person: string, patienceMs: number): Promise<Outcome<Forgotten>> {
  const lock = await takeLock(path, patienceMs);
  if ("by" in lock) return failure([busyIssue(path, lock.by, patienceMs, lockOf(path))]);
  try {
    const writing = await waitForWriters(path, patienceMs);
    if (writing !== undefined) {
      return failure([busyIssue(path, writing.by, patienceMs, writing.announcement)]);
    }
    return success(await forgetLines(path, person));
  } finally {
    await lock.release();
  }
}

async function reported<T>(path: string, work: () => Promise<Outcome<T>>): Promise<Outcome<T>> {
  try {
    return await work();
  } catch (error) {
    if (!isSystemError(error)) throw error;
    return failure([unwritable(path, codeOf(error))]);
  }
}

function unwritable(path: string, reason: string): Issue {
  return createIssue(tapewiseIssues, "file-unwritable", { received: path, facts: { reason } });
}

function busyIssue(path: string, by: Holder | "unknown", patienceMs: number, lock: string): Issue {
  const who = by === "unknown" ? "somebody unknown" : `process ${by.pid} on ${by.host}`;
  const facts = { who, seconds: patienceMs / 1000, lock };
  return createIssue(tapewiseIssues, "outcome-log-busy", { received: path, facts });
}
