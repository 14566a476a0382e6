/** A line of a byte stream, without its end; or the news that one was too long to keep. */
export interface RawLine {
  /** Counts from 1. */
  readonly number: number;
  /** Absent when the line was longer than the splitter keeps. */
  readonly bytes?: Uint8Array;
}

/** Cuts a stream of chunks into lines. Where the chunks end makes no difference. */
export interface LineSplitter {
  /** The lines that this chunk completes. */
  readonly push: (chunk: Uint8Array) => readonly RawLine[];
  /** The last line, if the stream does not end with a line end. */
  readonly end: () => readonly RawLine[];
}

const LINE_FEED = 10;
const CARRIAGE_RETURN = 13;

/**
 * A splitter that never holds more than `longest` bytes of an unfinished line: of a longer one only
 * the number is told. Lines end with `\n` or `\r\n`.
 *
 * @example
 * ```ts
 * import { createLineSplitter } from "tapewise/batch";
 * const splitter = createLineSplitter(1000);
 * const bytes = new TextEncoder().encode("one\ntwo\nthr");
 * splitter.push(bytes).map((line) => line.number); // => [1, 2]
 * splitter.end().map((line) => new TextDecoder().decode(line.bytes)); // => ["thr"]
 * ```
 */
export function createLineSplitter(longest: number): LineSplitter {
  let number = 1;
  let parts: Uint8Array[] = [];
  let held = 0;
  let tooLong = false;

  const keep = (part: Uint8Array): void => {
    if (tooLong || part.length === 0) return;
    // One byte more than `longest` may be the carriage return that is not part of the line.
    if (held + part.length > longest + 1) {
      tooLong = true;
      parts = [];
      held = 0;
      return;
    }
    parts.push(part);
    held += part.length;
  };

  const finish = (): RawLine => {
    const bytes = withoutCarriageReturn(joined(parts, held));
    const line = tooLong || bytes.length > longest ? { number } : { number, bytes };
    number += 1;
    parts = [];
    held = 0;
    tooLong = false;
    return line;
  };

  return {
    push: (chunk) => {
      const lines: RawLine[] = [];
      let start = 0;
      for (let end = chunk.indexOf(LINE_FEED); end !== -1; end = chunk.indexOf(LINE_FEED, start)) {
        keep(chunk.subarray(start, end));
        lines.push(finish());
        start = end + 1;
      }
      // A copy: the part left over must not keep the whole chunk alive, nor change when it is reused.
      keep(new Uint8Array(chunk.subarray(start)));
      return lines;
    },
    end: () => (held > 0 || tooLong ? [finish()] : []),
  };
}

function joined(parts: readonly Uint8Array[], length: number): Uint8Array {
  const [first] = parts;
  if (parts.length === 1 && first !== undefined) return first;
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

function withoutCarriageReturn(bytes: Uint8Array): Uint8Array {
  return bytes.at(-1) === CARRIAGE_RETURN ? bytes.subarray(0, -1) : bytes;
}
