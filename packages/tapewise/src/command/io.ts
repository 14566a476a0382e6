/// <reference types="node" />
import { once } from "node:events";
import type { Readable, Writable } from "node:stream";
import { cleanJson, cleanLines } from "./text/clean.ts";
import { PAGE_WIDTH } from "./text/wrap.ts";

/** The streams of the command: the process's own, or a test's. */
export interface Io {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly stdout: Writable & { readonly isTTY?: boolean; readonly columns?: number };
  readonly stderr: Writable;
  /** Why `stdin` cannot be read although it looks merely empty. */
  readonly inputFault?: string | undefined;
  /** The type of the terminal, as `TERM` has it; a common one where it is left out. */
  readonly term?: string | undefined;
}

/** Whether what has been shown can be taken back: not on a printer's kind of terminal, nor on an unknown one. */
export function hasCursor({ stdout, term }: Io): boolean {
  return stdout.isTTY === true && term !== "dumb" && term !== "unknown" && term !== "";
}

/** How many cells a line may take: a page's, or as many as a narrower terminal shows. */
export function pageWidth({ isTTY, columns }: Io["stdout"]): number {
  if (isTTY !== true || columns === undefined || !(columns > 0)) return PAGE_WIDTH;
  return Math.min(PAGE_WIDTH, Math.max(NARROWEST_PAGE, columns));
}

/** Below this, text is no easier to read for fitting. */
const NARROWEST_PAGE = 40;

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
async function write(to: Writable, text: string): Promise<boolean> {
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
