/// <reference types="node" />
import { randomUUID } from "node:crypto";
import { link, rm, writeFile } from "node:fs/promises";
import { setTimeout as sleep } from "node:timers/promises";
import { codeOf, type Holder, holderHere, holderIn, isGone } from "./holder.ts";

/** Between two looks at somebody who is in the way. */
export const PAUSE_MS = 10;

/** A lock that is held. */
export interface Held {
  readonly release: () => Promise<void>;
}

/** Who kept a lock from being taken until there was no time left. */
export interface Kept {
  readonly by: Holder | "unknown";
}

/** The file that says that a log is being rewritten, and by whom. */
export function lockOf(path: string): string {
  return `${path}.lock`;
}

/** Waits until nobody who may still run holds the lock; tells who does where that takes too long. */
export async function waitForLock(path: string, patienceMs: number): Promise<Kept | undefined> {
  const deadline = Date.now() + patienceMs;
  for (;;) {
    const by = await holderIn(lockOf(path));
    if (by === undefined || (await isGone(by))) return undefined;
    if (Date.now() >= deadline) return { by };
    await sleep(PAUSE_MS);
  }
}

/**
 * Takes the lock of a log. It is a hard link to a file that already says who holds it, so that there is no moment at
 * which a lock names nobody.
 *
 * Of a holder that died the lock is taken away by one process only: by whoever makes the link that is named after this
 * one holding, which never comes again. If that one dies too before it is done, the right goes on in the same way to
 * whoever makes the link that is named after *its* holding. So nobody can take away a lock that somebody else has
 * taken since.
 */
export async function takeLock(path: string, patienceMs: number): Promise<Held | Kept> {
  const lock = lockOf(path);
  const me = await holderHere(randomUUID());
  const mine = `${lock}.${me.nonce}`;
  const deadline = Date.now() + patienceMs;
  await writeFile(mine, JSON.stringify(me), { flag: "wx" });
  try {
    for (;;) {
      if (await canLink(mine, lock)) return { release: () => rm(lock, { force: true }) };
      const by = await holderIn(lock);
      if (by === undefined) continue;
      const isFree = by !== "unknown" && (await isGone(by)) && (await takeAway(lock, by, mine));
      if (isFree) continue;
      if (Date.now() >= deadline) return { by };
      await sleep(PAUSE_MS);
    }
  } finally {
    await rm(mine, { force: true });
  }
}

/** Takes a dead holder's lock away, or finds that somebody else is at it. */
async function takeAway(lock: string, dead: Holder, mine: string): Promise<boolean> {
  const claims: string[] = [];
  let previous = dead;
  for (;;) {
    const claim = `${lock}.after.${previous.nonce}`;
    claims.push(claim);
    if (await canLink(mine, claim)) break;
    const by = await holderIn(claim);
    if (by === undefined || by === "unknown" || !(await isGone(by))) return false;
    previous = by;
  }
  const now = await holderIn(lock);
  if (now !== undefined && now !== "unknown" && now.nonce === dead.nonce) await rm(lock, { force: true });
  for (const claim of claims) await rm(claim, { force: true });
  return true;
}

async function canLink(from: string, to: string): Promise<boolean> {
  try {
    await link(from, to);
    return true;
  } catch (error) {
    if (codeOf(error) === "EEXIST") return false;
    throw error;
  }
}
