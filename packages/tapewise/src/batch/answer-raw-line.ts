import type { SizeChart } from "@tapewise/charts";
import { createIssue } from "@tapewise/outcome";
import { tapewiseIssues } from "../issues.ts";
import type { BatchLine } from "./choice-line.ts";
import { type ChooseLineOptions, chooseLine } from "./choose-line.ts";
import { issueLine } from "./issue-line.ts";
import type { RawLine } from "./line-splitter.ts";

/** The longest line that is read, in bytes: a person with 200 readings of every dimension needs a tenth of it (assumption). */
export const LONGEST_LINE = 1_000_000;

const BYTE_ORDER_MARK = "\uFEFF";

/**
 * Answers a line as it comes out of a byte stream, or `undefined` for a blank one, which has no answer.
 * A byte order mark is passed over at the very beginning of the stream and nowhere else.
 *
 * Codes: `batch-line-too-long`, `batch-line-not-utf8`, and those of {@link chooseLine}.
 *
 * @example
 * ```ts
 * import { answerRawLine, createLineSplitter, LONGEST_LINE } from "tapewise/batch";
 * const splitter = createLineSplitter(LONGEST_LINE);
 * const lines = splitter.push(new TextEncoder().encode("\n{\n"));
 * lines.map((line) => answerRawLine(line, [])?.issues?.[0]?.message); // => [undefined, "line 2 is not JSON"]
 * ```
 */
export function answerRawLine(
  raw: RawLine,
  charts: readonly SizeChart[],
  options: Omit<ChooseLineOptions, "line"> = {},
): BatchLine | undefined {
  const line = raw.number;
  if (raw.bytes === undefined) {
    const facts = { line, limit: LONGEST_LINE };
    return issueLine(null, [
      createIssue(tapewiseIssues, "batch-line-too-long", { facts, received: "a longer line" }),
    ]);
  }
  const text = decode(raw.bytes);
  if (text === undefined) {
    const received = `${raw.bytes.length} bytes`;
    return issueLine(null, [
      createIssue(tapewiseIssues, "batch-line-not-utf8", { facts: { line }, received }),
    ]);
  }
  const content = line === 1 && text.startsWith(BYTE_ORDER_MARK) ? text.slice(1) : text;
  return content.trim() === "" ? undefined : chooseLine(content, charts, { ...options, line });
}

function decode(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}
