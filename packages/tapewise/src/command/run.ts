import { CommanderError } from "commander";
import { EXIT, type ExitStatus, graver } from "./exit-status.ts";
import type { Io } from "./io.ts";
import { buildProgram } from "./program.ts";
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
    if (isClosedPipe(error)) return status;
    const what = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    io.stderr.write(
      `tapewise: this should not have happened. Please report it, with what you called: ${cleanWord(what)}\n`,
    );
    return EXIT.fault;
  }
}

/** Whether an error only says that the reader of our output has left, as `head` does. */
export function isClosedPipe(error: unknown): boolean {
  return (
    error instanceof Error &&
    "code" in error &&
    (error.code === "EPIPE" || error.code === "ERR_STREAM_DESTROYED")
  );
}
