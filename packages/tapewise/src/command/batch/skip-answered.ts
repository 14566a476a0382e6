import { createIssue, type Issue } from "@tapewise/outcome";
import type { BlockAnswerer } from "../../batch/lane/answer-block.ts";
import { createBytePage } from "../../batch/lane/byte-page.ts";
import type { LineBlock } from "../../batch/lane/line-blocks.ts";
import { tapewiseIssues } from "../../issues.ts";
import type { OutputFile } from "./output-file.ts";

/** Passes over what is answered already. */
export interface Skipper {
  /** What of a block is still to be answered. */
  readonly rest: (block: LineBlock) => LineBlock | undefined;
  /** Why the answers there cannot be gone on with, once that shows. */
  readonly fault: () => Issue | undefined;
  /** The same at the end of the input: there may be more answers than people. */
  readonly faultAtEnd: () => Issue | undefined;
}

const LINE_FEED = 10;

/**
 * Passes over so many answered lines, blank ones not counted, and holds the last of them against its answer: other
 * people, other charts or another version would give another one.
 */
export function createSkipper(
  path: string,
  { lines, lastLine }: Pick<OutputFile, "lines" | "lastLine">,
  answer: BlockAnswerer,
): Skipper {
  let left = lines;
  let fault: Issue | undefined;
  const page = createBytePage(1 << 16);

  const pass = (line: LineBlock): void => {
    if (isBlank(line)) return;
    left -= 1;
    if (left > 0) return;
    page.length = 0;
    answer(line, page);
    const again = page.bytes.subarray(0, page.length);
    if (again.length === lastLine.length && again.every((byte, k) => byte === lastLine[k])) return;
    fault = createIssue(tapewiseIssues, "batch-resume-differs", {
      received: path,
      facts: { line: line.first },
    });
  };

  return {
    rest: (block) => {
      if (left === 0) return block;
      const { bytes } = block;
      if (bytes === undefined) {
        pass(block);
        return undefined;
      }
      let from = 0;
      let first = block.first;
      for (; left > 0 && from < bytes.length; first += 1) {
        const feed = bytes.indexOf(LINE_FEED, from);
        const end = feed < 0 ? bytes.length : feed + 1;
        pass({ first, bytes: bytes.subarray(from, end) });
        from = end;
      }
      return from < bytes.length ? { first, bytes: bytes.subarray(from) } : undefined;
    },
    fault: () => fault,
    faultAtEnd: () =>
      fault ??
      (left === 0
        ? undefined
        : createIssue(tapewiseIssues, "batch-resume-ahead", { received: path, facts: { lines, left } })),
  };
}

/** As the batch itself has it: white space alone, and a byte order mark at the very beginning. */
function isBlank({ first, bytes }: LineBlock): boolean {
  if (bytes === undefined) return false;
  if (bytes.some((byte) => byte > 0x20 && byte < 0x7f)) return false;
  try {
    const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
    return (first === 1 && text.startsWith("\uFEFF") ? text.slice(1) : text).trim() === "";
  } catch {
    return false;
  }
}
