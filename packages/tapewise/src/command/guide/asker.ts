import { clearLine, moveCursor } from "node:readline";
import { createInterface } from "node:readline/promises";
import { hasCursor, type Io } from "../io.ts";

/** Asks on a terminal, one line at a time. */
export interface Asker {
  /** The line that was typed, or `undefined` once the input has ended or Ctrl-C was pressed. */
  readonly ask: (prompt: string) => Promise<string | undefined>;
  /** Whether a line that was typed can be taken off the screen. */
  readonly hides: boolean;
  /** Takes the line just typed off the screen, where that can be done, so that it does not draw the next one towards it. */
  readonly hideLast: () => void;
  readonly close: () => void;
}

/**
 * An asker on the streams of the command. Lines that arrive before they are asked for wait for their
 * question, so that nothing pasted is lost.
 */
export function createAsker(io: Io): Asker {
  const { stdin, stdout } = io;
  const hides = hasCursor(io);
  // Without a history, which would bring earlier readings back at the touch of a key.
  const lines = createInterface({ input: stdin, output: stdout, terminal: hides, historySize: 0 });
  const waiting: string[] = [];
  let ended = false;
  let answer: ((line: string | undefined) => void) | undefined;
  const settle = (line: string | undefined): void => {
    const settling = answer;
    answer = undefined;
    settling?.(line);
  };
  lines.on("line", (line) => {
    if (answer === undefined) waiting.push(line);
    else settle(line);
  });
  lines.on("SIGINT", () => lines.close());
  lines.on("close", () => {
    ended = true;
    settle(undefined);
  });
  return {
    ask: (prompt) => {
      const ready = waiting.shift();
      if (ready !== undefined || ended) return Promise.resolve(ready);
      lines.setPrompt(prompt);
      lines.prompt();
      return new Promise((resolve) => {
        answer = resolve;
      });
    },
    hides,
    hideLast: () => {
      if (!hides) return;
      moveCursor(stdout, 0, -1);
      clearLine(stdout, 0);
    },
    close: () => lines.close(),
  };
}
