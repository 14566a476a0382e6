/// <reference types="node" />
import { open } from "node:fs/promises";
import { TextDecoder } from "node:util";
import { afterwardsIssues, type LoggedOutcome, safeParseOutcomeLine } from "@tapewise/afterwards";
import { createIssue, failure, IssuesError } from "@tapewise/outcome";
import { createLineSplitter, type RawLine } from "../batch/line-splitter.ts";
import { tapewiseIssues } from "../issues.ts";
import { codeOf, isSystemError } from "./holder.ts";

/** The longest line that is read, in bytes: a row has at most a few thousand (assumption). */
const LONGEST_OUTCOME_LINE = 100_000;

const CHUNK_BYTES = 1 << 18;

/** The lines of a log from the first to the last that stood there when the reading came to its end; blank ones are passed over. */
export async function* readLines(path: string): AsyncGenerator<LoggedOutcome> {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  const splitter = createLineSplitter(LONGEST_OUTCOME_LINE);
  let file: Awaited<ReturnType<typeof open>>;
  try {
    file = await open(path, "r");
  } catch (error) {
    // A log begins with its first row.
    if (codeOf(error) === "ENOENT") return;
    throw isSystemError(error) ? unreadable(path, error) : error;
  }
  try {
    for await (const chunk of file.createReadStream({ autoClose: false, highWaterMark: CHUNK_BYTES })) {
      for (const raw of splitter.push(chunk)) {
        const logged = readLine(raw, decoder);
        if (logged !== undefined) yield logged;
      }
    }
    for (const raw of splitter.end()) {
      const logged = readLine(raw, decoder);
      if (logged === undefined) continue;
      const isTorn = logged.outcome.issues.some(({ code }) => TORN.includes(code));
      yield isTorn ? { line: raw.number, outcome: broken("outcome-line-torn", raw) } : logged;
    }
  } catch (error) {
    throw isSystemError(error) ? unreadable(path, error) : error;
  } finally {
    await file.close();
  }
}

function unreadable(path: string, error: unknown): IssuesError {
  const details = { received: path, facts: { reason: codeOf(error) } };
  return new IssuesError([createIssue(tapewiseIssues, "file-unreadable", details)]);
}

/** What half a line looks like. */
const TORN: readonly string[] = ["outcome-line-not-json", "outcome-line-not-utf8"];

function readLine(raw: RawLine, decoder: TextDecoder): LoggedOutcome | undefined {
  if (raw.bytes === undefined) return { line: raw.number, outcome: broken("outcome-line-too-long", raw) };
  let text: string;
  try {
    text = decoder.decode(raw.bytes);
  } catch {
    return { line: raw.number, outcome: broken("outcome-line-not-utf8", raw) };
  }
  return text.trim() === "" ? undefined : { line: raw.number, outcome: safeParseOutcomeLine(text) };
}

function broken(
  code: "outcome-line-torn" | "outcome-line-not-utf8" | "outcome-line-too-long",
  { bytes }: RawLine,
): LoggedOutcome["outcome"] {
  return failure([
    createIssue(afterwardsIssues, code, {
      received: bytes === undefined ? "a longer line" : `${bytes.length} bytes`,
      facts: { limit: LONGEST_OUTCOME_LINE },
    }),
  ]);
}
