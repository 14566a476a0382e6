import { formatIssue } from "@tapewise/outcome";
import { CommanderError } from "commander";
import { EXIT, type ExitStatus, graver } from "./exit-status.ts";
import { unreadableInput } from "./files.ts";
import type { Io } from "./io.ts";
import { buildProgram } from "./program.ts";
import { UnreadableInputError } from "./read-input.ts";
import { cleanWord } from "./text/clean.ts";

/**
 * Runs the command with the words after its name, and resolves to its exit status. Whatever happens,
 * nobody is shown a stack trace.
 */
export async function run(argv: readonly string[], io: Io): Promise<ExitStatus> {
  let status: ExitStatus = EXIT.answer;
  const finish = (one: ExitStatus): void => {
    status = graver(status, one);
  };
  try {
    await buildProgram({ io, finish }).parseAsync(argv, { from: "user" });
    return status;
  } catch (error) {
    // Help and version end the parser by an exception too.
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.answer : EXIT.misuse;
    if (error instanceof UnreadableInputError) {
      io.stderr.write(`${cleanWord(formatIssue(unreadableInput(error)))}\n`);
      return EXIT.misuse;
    }
    if (isClosedPipe(error)) return status;
    io.stderr.write(apology(error));
    return EXIT.fault;
  }
}

/** What is said of a fault of the program, or of the machine, on one line. */
export function apology(error: unknown): string {
  const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  return `tapewise: this should not have happened; if it is not your disk, please report it, with what you called: ${cleanWord(what)}\n`;
}

/** Whether an error only says that the reader of our output has left, as `head` does. */
export function isClosedPipe(error: unknown): boolean {
  return (
    error instanceof Error &&
    "code" in error &&
    (error.code === "EPIPE" || error.code === "ERR_STREAM_DESTROYED")
  );
}
