import process from "node:process";
import { EXIT } from "./exit-status.ts";
import { inputFault } from "./read-input.ts";
import { apology, isClosedPipe, run } from "./run.ts";

/** The command on the streams of this process; sets its exit status. */
export async function main(argv: readonly string[]): Promise<void> {
  const { stdin, stdout, stderr } = process;
  let unwritable: Error | undefined;
  for (const stream of [stdout, stderr]) {
    stream.on("error", (error) => {
      // A full disk is worth a word; a reader who has left, as `head` does, is not.
      if (!isClosedPipe(error)) unwritable = error;
      stream.destroy();
    });
  }
  const status = await run(argv, {
    stdin,
    stdout,
    stderr,
    inputFault: inputFault(),
    term: terminalType(),
  });
  process.exitCode = status;
  // An input that nobody reads any longer must not keep the process alive.
  if (!stdin.isTTY) stdin.destroy();
  process.on("exit", () => {
    // Who was writing at the time may have said so already.
    if (unwritable === undefined || status === EXIT.fault) return;
    process.exitCode = EXIT.fault;
    if (!stderr.destroyed) stderr.write(apology(unwritable));
  });
}

/** Windows names no type, and its terminals can do what is asked of them. */
function terminalType(): string | undefined {
  return process.env.TERM ?? (process.platform === "win32" ? undefined : "");
}
