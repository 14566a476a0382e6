import { readFile } from "node:fs/promises";
import type { ReadOutcomes } from "@tapewise/afterwards";
import { createIssue, failure, type Outcome } from "@tapewise/outcome";
import { tapewiseIssues } from "../../issues.ts";
import { readLog } from "./read-log.ts";

/**
 * Reads a log that is going to be changed, so that no other file is changed in its place: one that holds something, and
 * nothing that is an outcome or begins like one. Codes: `file-not-outcome-log`, and those of `readLog`.
 */
export async function requireLog(path: string): Promise<Outcome<ReadOutcomes>> {
  const read = await readLog(path);
  if (!read.ok || read.value.rows.length > 0 || looksLikeLog(await readFile(path, "utf8"))) return read;
  return failure([createIssue(tapewiseIssues, "file-not-outcome-log", { received: path })]);
}

/** Whether a text without a row is empty, holds a row of another release, or one that breaks off, wherever it does. */
function looksLikeLog(text: string): boolean {
  const lines = text.split("\n").flatMap((line) => (line.trim() === "" ? [] : [line.trim()]));
  const [first = "", ...others] = lines;
  return lines.some((line) => ROW.test(line)) || (others.length === 0 && BEGINNING.startsWith(first));
}

const BEGINNING = '{"v":';
const ROW = /^\{\s*"v"\s*:/;
