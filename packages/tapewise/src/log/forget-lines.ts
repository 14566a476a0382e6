/// <reference types="node" />
import { randomUUID } from "node:crypto";
import { open, readdir, readFile, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import type { Forgotten } from "@tapewise/afterwards";
import { codeOf, holderIn, isGone } from "./holder.ts";
import { lockOf } from "./lock.ts";
import { namesPerson } from "./names-person.ts";
import { syncFolder } from "./sync-folder.ts";

const LINE_FEED = 10;
/** A write that is under way is over in much less. */
const MOMENT_MS = 20;

/**
 * Rewrites a log without the lines of a person; the other lines keep every byte. The caller holds the lock.
 *
 * The lines are copied to a file beside the log, that is synced, and it takes the log's name in one step: who opens
 * the log sees either all of it as it was, or all of it as it shall be, whatever happens in between.
 */
export async function forgetLines(log: string, person: string): Promise<Forgotten> {
  await removeLeftovers(log);
  const removed = { rows: 0, unreadable: 0 };
  const bytes = await readSettled(log);
  if (bytes === undefined) return removed;
  const { mode } = await stat(log);
  const kept: Buffer[] = [];
  for (let from = 0; from < bytes.length; ) {
    const feed = bytes.indexOf(LINE_FEED, from);
    const to = feed === -1 ? bytes.length : feed + 1;
    const line = bytes.subarray(from, to);
    const kind = namesPerson(textOf(line), person);
    if (kind === "row") removed.rows += 1;
    else if (kind === "unreadable") removed.unreadable += 1;
    else kept.push(line);
    from = to;
  }
  if (removed.rows + removed.unreadable > 0) await replace(log, Buffer.concat(kept), mode);
  return removed;
}

/** All bytes of a log. If it ends in the middle of a line, that may be a write under way: it is given a moment. */
async function readSettled(log: string): Promise<Buffer | undefined> {
  try {
    const bytes = await readFile(log);
    if (bytes.length === 0 || bytes.at(-1) === LINE_FEED) return bytes;
    await sleep(MOMENT_MS);
    return await readFile(log);
  } catch (error) {
    // A log begins with its first row.
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
}

async function replace(log: string, bytes: Buffer, mode: number): Promise<void> {
  const next = `${log}.${randomUUID()}${NEXT}`;
  try {
    const file = await open(next, "wx", mode & 0o777);
    try {
      // What is asked for at opening is narrowed by the process's mask.
      await file.chmod(mode & 0o777);
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(next, log);
  } catch (error) {
    await rm(next, { force: true });
    throw error;
  }
  await syncFolder(log);
}

const NEXT = ".next";

/**
 * Takes away what was left by those who died: copies of the log, which hold rows of people, and files by which they
 * took the lock or meant to. Whoever calls this holds the lock, so that no copy is under way, and the locks that dead
 * ones held or claimed are gone for good.
 */
async function removeLeftovers(log: string): Promise<void> {
  const [folder, beginning, ofLock] = [dirname(log), `${basename(log)}.`, `${basename(lockOf(log))}.`];
  for (const name of await readdir(folder)) {
    const path = join(folder, name);
    const isCopy = name.startsWith(beginning) && name.endsWith(NEXT);
    if (isCopy && UUID.test(name.slice(beginning.length, -NEXT.length))) await rm(path, { force: true });
    if (!name.startsWith(ofLock) || !UUID.test(name.slice(-UUID_LENGTH))) continue;
    const holder = await holderIn(path);
    if (holder !== undefined && (await isGone(holder))) await rm(path, { force: true });
  }
}

const UUID = /^[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
const UUID_LENGTH = 36;

/** Bytes as text with the line end left out; what is no UTF-8 is replaced, which only a look for a name is done on. */
function textOf(line: Buffer): string {
  return line
    .toString("utf8")
    .replace(/^\uFEFF/, "")
    .replace(/\r?\n$/, "");
}
