/// <reference types="node" />
import { randomBytes } from "node:crypto";
import { open, readdir, rm } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { type Holder, holderHere, isGone } from "./holder.ts";
import { type Held, type Kept, lockOf, PAUSE_MS, waitForLock } from "./lock.ts";

/** A writer that is at it for longer than the patience of whoever forgets, and the file that says so. */
export interface Writing extends Kept {
  readonly announcement: string;
}

/**
 * Begins an append: an empty file beside the log says by its name who is writing. Writers do not keep each other off.
 *
 * First the writer announces itself and then it looks for the lock; whoever forgets first takes the lock and then looks
 * for announcements. So of two that come at the same moment one at least sees the other, and a row that was seen by
 * whoever forgets is never written again by a writer that finds its line gone.
 */
export async function announceWriter(path: string, patienceMs: number): Promise<Held | Kept> {
  const me = await holderHere(randomBytes(6).toString("hex"));
  const mine = `${lockOf(path)}${WRITER}${me.pid}.${me.born ?? ""}.${me.nonce}.${me.host}`;
  const release = (): Promise<void> => rm(mine, { force: true });
  const deadline = Date.now() + patienceMs;
  for (;;) {
    await (await open(mine, "wx")).close();
    const isHeld = await waitForLock(path, 0).catch(async (error: unknown) => {
      await release();
      throw error;
    });
    if (isHeld === undefined) return { release };
    // Whoever holds the lock waits for everybody who has announced a write.
    await release();
    const kept = await waitForLock(path, Math.max(0, deadline - Date.now()));
    if (kept !== undefined) return kept;
  }
}

/** Waits until nobody writes who may still run, and takes away what dead ones announced. The caller holds the lock. */
export async function waitForWriters(path: string, patienceMs: number): Promise<Writing | undefined> {
  const [folder, beginning] = [dirname(path), `${basename(lockOf(path))}${WRITER}`];
  const deadline = Date.now() + patienceMs;
  for (;;) {
    let busy: Writing | undefined;
    for (const name of await readdir(folder)) {
      const by = name.startsWith(beginning) ? writerOf(name.slice(beginning.length)) : undefined;
      if (by === undefined) continue;
      const announcement = join(folder, name);
      if (await isGone(by)) await rm(announcement, { force: true });
      else busy = { by, announcement };
    }
    if (busy === undefined || Date.now() >= deadline) return busy;
    await sleep(PAUSE_MS);
  }
}

const WRITER = ".writer.";
const NAME = /^(\d+)\.(\d*)\.([0-9a-f]{12})\.(.+)$/;

function writerOf(name: string): Holder | undefined {
  const [, pid, born, nonce, host] = NAME.exec(name) ?? [];
  if (pid === undefined || nonce === undefined || host === undefined) return undefined;
  return { pid: Number(pid), host, nonce, ...(born === undefined || born === "" ? {} : { born }) };
}
