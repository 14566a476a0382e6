/// <reference types="node" />
import { constants, type FileHandle, open } from "node:fs/promises";
import { createIssue, failure, type Outcome, success } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";

/** A file of answers. */
export interface OutputFile {
  readonly handle: FileHandle;
  /** How many whole lines there are in it already, the last of them, and whether any of them is no choice. */
  readonly lines: number;
  /** How many bytes these lines take. */
  readonly length: number;
  readonly lastLine: Uint8Array;
  readonly anyBad: boolean;
}

const LINE_FEED = 10;

/** Opens a file for answers, empty. Code: `file-unwritable`. */
export async function startOutput(path: string): Promise<Outcome<OutputFile>> {
  try {
    const handle = await open(path, "w");
    return success({ handle, lines: 0, length: 0, lastLine: new Uint8Array(0), anyBad: false });
  } catch (error) {
    return unwritable(path, error);
  }
}

/**
 * Opens the answers of a batch that was ended before its time, and cuts off a last line that is torn. A file that is
 * not there is begun. Code: `file-unwritable`.
 */
export async function resumeOutput(path: string): Promise<Outcome<OutputFile>> {
  try {
    const handle = await open(path, constants.O_RDWR | constants.O_CREAT, 0o666);
    const found = await readLines(handle);
    await handle.truncate(found.length);
    return success({ handle, ...found });
  } catch (error) {
    return unwritable(path, error);
  }
}

async function readLines(handle: FileHandle) {
  const buffer = new Uint8Array(1 << 16);
  let line: Uint8Array = new Uint8Array(0);
  let lastLine: Uint8Array = new Uint8Array(0);
  let [lines, length, at, anyBad] = [0, 0, 0, false];
  for (;;) {
    const { bytesRead } = await handle.read(buffer, 0, buffer.length, at);
    if (bytesRead === 0) return { lines, length, lastLine, anyBad };
    let start = 0;
    for (
      let end = buffer.indexOf(LINE_FEED);
      end >= 0 && end < bytesRead;
      end = buffer.indexOf(LINE_FEED, start)
    ) {
      lastLine = joined(line, buffer.subarray(start, end + 1));
      line = new Uint8Array(0);
      lines += 1;
      start = end + 1;
      length = at + start;
      anyBad ||= isIssueLine(lastLine);
    }
    line = joined(line, buffer.subarray(start, bytesRead));
    at += bytesRead;
  }
}

const ISSUES = ',"issues":';
const [QUOTE, BACKSLASH, COMMA] = [0x22, 0x5c, 0x2c];

/** Whether a line that a batch wrote holds nothing but issues after its id. */
function isIssueLine(line: Uint8Array): boolean {
  let at = '{"id":'.length;
  if (line[at] === QUOTE) {
    for (at += 1; at < line.length && line[at] !== QUOTE; at += 1) if (line[at] === BACKSLASH) at += 1;
    at += 1;
  } else while (at < line.length && line[at] !== COMMA) at += 1;
  for (let k = 0; k < ISSUES.length; k += 1) if (line[at + k] !== ISSUES.charCodeAt(k)) return false;
  return true;
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(first.length + second.length);
  bytes.set(first);
  bytes.set(second, first.length);
  return bytes;
}

function unwritable(path: string, error: unknown): Outcome<never> {
  const reason = error instanceof Error && "code" in error ? String(error.code) : "unknown reason";
  return failure([createIssue(tapewiseIssues, "file-unwritable", { received: path, facts: { reason } })]);
}
