/** A line about how far a batch has come, written over and over at a terminal. */
export interface Progress {
  /** Takes answers that are written, and counts their lines. */
  readonly add: (bytes: Uint8Array) => void;
  readonly end: () => void;
}

const EVERY_MS = 500;
const LINE_FEED = 10;

/** Progress on a terminal or wherever it is asked for; nothing of it elsewhere. */
export function createProgress(
  to: { readonly write: (text: string) => unknown; readonly isTTY?: boolean },
  isAsked: boolean,
  now: () => number = Date.now,
): Progress {
  const isTerminal = to.isTTY === true;
  if (!(isTerminal || isAsked)) return { add: () => undefined, end: () => undefined };
  const start = now();
  let last = start;
  let count = 0;
  const show = (): void => {
    last = now();
    const seconds = Math.max(0.001, (last - start) / 1000);
    const text = `${count} people, ${Math.round(count / seconds)} a second`;
    to.write(isTerminal ? `\r${text}\u001b[K` : `${text}\n`);
  };
  return {
    add: (bytes) => {
      for (let at = bytes.indexOf(LINE_FEED); at >= 0; at = bytes.indexOf(LINE_FEED, at + 1)) count += 1;
      if (now() - last >= EVERY_MS) show();
    },
    end: () => {
      show();
      if (isTerminal) to.write("\n");
    },
  };
}
