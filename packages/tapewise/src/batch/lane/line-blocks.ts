/** Whole lines of a byte stream, as many as came together, or the news that one was too long to keep. */
export interface LineBlock {
  /** The number of the first line; counts from 1. */
  readonly first: number;
  /** The lines with their ends; the very last line of a stream may lack its own. Absent for a line too long to keep. */
  readonly bytes?: Uint8Array;
}

/** Cuts a stream of chunks into blocks of whole lines. */
export interface LineBlocks {
  /** The blocks that this chunk completes. The bytes may be those of the chunk itself. */
  readonly push: (chunk: Uint8Array) => readonly LineBlock[];
  /** The last line, if the stream does not end with a line end. */
  readonly end: () => readonly LineBlock[];
}

const LINE_FEED = 10;

/** Cuts that never hold more than `longest` bytes of a line that is not at its end. */
export function createLineBlocks(longest: number): LineBlocks {
  let next = 1;
  let held: Uint8Array = new Uint8Array(0);
  let isTooLong = false;

  const block = (bytes: Uint8Array): LineBlock => {
    const first = next;
    next += countLines(bytes);
    return { first, bytes };
  };
  const hold = (rest: Uint8Array): void => {
    if (isTooLong) return;
    // Two bytes more than `longest` may be the line end.
    if (held.length + rest.length > longest + 2) {
      isTooLong = true;
      held = new Uint8Array(0);
    } else held = joined(held, rest);
  };

  return {
    push: (chunk) => {
      const last = chunk.lastIndexOf(LINE_FEED);
      if (last < 0) {
        hold(chunk);
        return [];
      }
      const blocks: LineBlock[] = [];
      let start = 0;
      if (isTooLong || held.length > 0) {
        start = chunk.indexOf(LINE_FEED) + 1;
        hold(chunk.subarray(0, start));
        if (isTooLong) {
          blocks.push({ first: next });
          next += 1;
        } else blocks.push(block(held));
        held = new Uint8Array(0);
        isTooLong = false;
      }
      if (start <= last) blocks.push(block(chunk.subarray(start, last + 1)));
      hold(chunk.subarray(last + 1));
      return blocks;
    },
    end: () => {
      if (isTooLong) return [{ first: next }];
      return held.length === 0 ? [] : [block(held)];
    },
  };
}

function countLines(bytes: Uint8Array): number {
  let count = 0;
  for (let at = bytes.indexOf(LINE_FEED); at >= 0; at = bytes.indexOf(LINE_FEED, at + 1)) count += 1;
  return count;
}

/** A copy, so that the chunk is not kept alive by its last line, nor changes it when it is used again. */
function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(first.length + second.length);
  bytes.set(first);
  bytes.set(second, first.length);
  return bytes;
}
