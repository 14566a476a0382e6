import { constants, type FileHandle, open, writeFile } from "node:fs/promises";
import {
  createIssue,
  failure,
  type Issue,
  type IssueDetails,
  type Outcome,
  success,
} from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import type { Io } from "./io.ts";
import { readInput, UnreadableInputError } from "./read-input.ts";

/** The largest chart or person file that is read, in bytes (assumption: a chart of 10 000 sizes has a tenth of it). */
const LARGEST_FILE = 4_000_000;

/**
 * The text of a file, without a byte order mark.
 *
 * Codes: `file-missing`, `file-is-directory`, `file-unreadable`, `file-too-large`, `file-empty`,
 * `file-utf16`, `file-binary`, `file-not-utf8`.
 */
export async function readTextFile(path: string): Promise<Outcome<string>> {
  const about = { received: path };
  let file: FileHandle | undefined;
  try {
    file = await open(path, constants.O_RDONLY);
    const stats = await file.stat();
    if (stats.isDirectory()) return fail("file-is-directory", about);
    if (stats.isFile() && stats.size > LARGEST_FILE) return fail("file-too-large", withLimit(about));
    return await readTextStream(file.createReadStream({ autoClose: false }), path);
  } catch (error) {
    const reason = codeOf(error);
    if (reason === "ENOENT" || reason === "ENOTDIR") return fail("file-missing", about);
    if (reason === "EISDIR") return fail("file-is-directory", about);
    return fail("file-unreadable", { ...about, facts: { reason } });
  } finally {
    await file?.close().catch(() => undefined);
  }
}

/** The same for the standard input. */
export async function readTextInput(io: Io): Promise<Outcome<string>> {
  try {
    return await readTextStream(readInput(io), STANDARD_INPUT);
  } catch (error) {
    if (error instanceof UnreadableInputError) return failure([unreadableInput(error)]);
    throw error;
  }
}

/** The issue about a standard input that cannot be read. */
export function unreadableInput({ message }: UnreadableInputError): Issue {
  return createIssue(tapewiseIssues, "file-unreadable", {
    received: STANDARD_INPUT,
    facts: { reason: message },
  });
}

const STANDARD_INPUT = "the standard input";

async function readTextStream(stream: AsyncIterable<Uint8Array>, name: string): Promise<Outcome<string>> {
  const about = { received: name };
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of stream) {
    size += chunk.length;
    if (size > LARGEST_FILE) return fail("file-too-large", withLimit(about));
    chunks.push(chunk);
  }
  const bytes = Buffer.concat(chunks);
  if (bytes.length === 0) return fail("file-empty", about);
  if (isUtf16(bytes)) return fail("file-utf16", about);
  const offset = bytes.indexOf(0);
  if (offset !== -1) return fail("file-binary", { ...about, facts: { offset } });
  try {
    return success(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return fail("file-not-utf8", about);
  }
}

/** Whether bytes begin with the mark of UTF-16, or as Latin text does in it: with every second byte zero. */
function isUtf16(bytes: Uint8Array): boolean {
  const [first = 0, second = 0] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return true;
  const beginning = bytes.subarray(0, 200);
  const zeros = (parity: number): number =>
    beginning.reduce((count, byte, at) => (byte === 0 && at % 2 === parity ? count + 1 : count), 0);
  const [even, odd] = [zeros(0), zeros(1)];
  // Most and not all: a name may hold a letter from further away.
  return Math.min(even, odd) === 0 && Math.max(even, odd) > beginning.length * 0.4;
}

/** Writes a text file anew. Code: `file-unwritable`. */
export async function writeTextFile(path: string, text: string): Promise<Outcome<string>> {
  try {
    await writeFile(path, text, "utf8");
    return success(path);
  } catch (error) {
    return fail("file-unwritable", { received: path, facts: { reason: codeOf(error) } });
  }
}

/** Codes of issues about the path itself and not about what is in the file: another file was meant. */
export const pathCodes: readonly string[] = [
  "file-not-outcome-log",
  "file-missing",
  "file-is-directory",
  "file-unreadable",
  "file-unwritable",
];

function withLimit(about: IssueDetails): IssueDetails {
  return { ...about, facts: { limit: LARGEST_FILE } };
}

function fail(code: keyof typeof tapewiseIssues, details: IssueDetails): Outcome<never> {
  return failure([createIssue(tapewiseIssues, code, details)]);
}

function codeOf(error: unknown): string {
  return error instanceof Error && "code" in error ? String(error.code) : "unknown reason";
}
