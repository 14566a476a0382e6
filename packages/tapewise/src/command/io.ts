/// <reference types="node" />
import { once } from "node:events";
import type { Readable, Writable } from "node:stream";
import { cleanJson, cleanLines } from "./text/clean.ts";

/** The streams of the command: the process's own, or a test's. */
export interface Io {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly stdout: Writable & { readonly isTTY?: boolean };
  readonly stderr: Writable;
}

/** Prints lines for people, with whatever could disturb a terminal taken out. */
export async function print(to: Writable, lines: readonly string[]): Promise<void> {
  if (lines.length > 0) await write(to, cleanLines(`${lines.join("\n")}\n`));
}

/** Prints a value for programs, indented. */
export async function printJson(to: Writable, value: unknown): Promise<void> {
  await write(to, `${cleanJson(value, 2)}\n`);
}

/**
 * Writes, and waits while the reader does not keep up, so that nothing piles up in memory. Resolves to
 * whether the reader is still there.
 */
export async function write(to: Writable, text: string): Promise<boolean> {
  if (to.destroyed || to.writableEnded) return false;
  if (to.write(text)) return true;
  const settled = new AbortController();
  const { signal } = settled;
  try {
    await Promise.race([once(to, "drain", { signal }), once(to, "close", { signal })]);
  } finally {
    settled.abort();
  }
  return !to.destroyed;
}
