/// <reference types="node" />
import { constants, type FileHandle, open, readFile, stat } from "node:fs/promises";
import { syncFolder } from "./sync-folder.ts";

/** How an attempt to add a line came out. */
export type Attempt =
  /** The line stands whole in the file that was opened, and that file was the log when it was looked at. */
  | { readonly kind: "there" }
  /** The line was written, and the file that holds it is not the log any more. */
  | { readonly kind: "replaced" }
  /** The system took only a part of the line. */
  | { readonly kind: "cut-short"; readonly written: number; readonly of: number };

/** How lines are added. */
export interface Appending {
  /** Whether the line shall outlast a loss of power. */
  readonly isSynced: boolean;
}

const LINE_FEED = 10;

/** A line may be put behind what a writer left that was killed at that moment; more often than this it is not that. */
const MOST_TRIES = 5;

/**
 * Adds one line with one write, at the end wherever that is then (`O_APPEND`). If what stood last has no line end, the
 * line begins with one. Afterwards the line is read back: whoever was killed in the middle of a write between the look
 * and ours has left half a line before it, and then ours is written once more.
 *
 * The caller has announced the write, so that nobody is forgotten meanwhile. A program that knows nothing of that, such
 * as an editor, may still have put another file in the log's place: then the line has to be added again.
 */
export async function appendLine(path: string, line: string, { isSynced }: Appending): Promise<Attempt> {
  const file = await open(path, constants.O_RDWR | constants.O_APPEND | constants.O_CREAT, 0o666);
  try {
    const bytes = Buffer.from(`${line}\n`);
    for (let tries = 0; ; tries += 1) {
      const { size } = await file.stat();
      const isOpen = size > 0 && (await byteAt(file, size - 1)) !== LINE_FEED;
      const whole = isOpen ? Buffer.concat([Buffer.of(LINE_FEED), bytes]) : bytes;
      const { bytesWritten } = await file.write(whole);
      if (bytesWritten < whole.length) {
        return { kind: "cut-short", written: bytesWritten, of: whole.length };
      }
      if (holdsLine(await tailOf(file, Math.max(0, size - 1)), bytes, size === 0)) {
        if (isSynced) await file.datasync();
        if (isSynced && size === 0) await syncFolder(path);
        break;
      }
      if (tries + 1 >= MOST_TRIES) return { kind: "cut-short", written: 0, of: whole.length };
    }
    return { kind: (await isLog(file, path)) ? "there" : "replaced" };
  } finally {
    await file.close();
  }
}

/** Whether a log holds a line, word for word. */
export async function findLine(path: string, line: string): Promise<boolean> {
  try {
    return holdsLine(await readFile(path), Buffer.from(`${line}\n`), true);
  } catch {
    return false;
  }
}

/** Whether a line with its end stands in bytes as a line of its own. */
function holdsLine(bytes: Buffer, line: Buffer, fromStart: boolean): boolean {
  for (let at = bytes.indexOf(line); at !== -1; at = bytes.indexOf(line, at + 1)) {
    if (at === 0 ? fromStart : bytes[at - 1] === LINE_FEED) return true;
  }
  return false;
}

async function byteAt(file: FileHandle, position: number): Promise<number | undefined> {
  const { buffer, bytesRead } = await file.read(Buffer.alloc(1), 0, 1, position);
  return bytesRead === 1 ? buffer[0] : undefined;
}

async function tailOf(file: FileHandle, from: number): Promise<Buffer> {
  const { size } = await file.stat();
  const buffer = Buffer.alloc(Math.max(0, size - from));
  let filled = 0;
  while (filled < buffer.length) {
    const { bytesRead } = await file.read(buffer, filled, buffer.length - filled, from + filled);
    if (bytesRead === 0) break;
    filled += bytesRead;
  }
  return buffer.subarray(0, filled);
}

/** Whether the path still leads to this very file. */
async function isLog(file: FileHandle, path: string): Promise<boolean> {
  try {
    const [here, there] = await Promise.all([file.stat({ bigint: true }), stat(path, { bigint: true })]);
    return here.ino === there.ino && here.dev === there.dev;
  } catch {
    return false;
  }
}
