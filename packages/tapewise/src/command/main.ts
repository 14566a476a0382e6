import process from "node:process";
import { isClosedPipe, run } from "./run.ts";

/** The command on the streams of this process; sets its exit status. */
export async function main(argv: readonly string[]): Promise<void> {
  const { stdin, stdout, stderr } = process;
  for (const stream of [stdout, stderr]) {
    stream.on("error", (error) => {
      if (!isClosedPipe(error)) throw error;
      stream.destroy();
    });
  }
  process.exitCode = await run(argv, { stdin, stdout, stderr });
  // An input that nobody reads any longer must not keep the process alive.
  if (!stdin.isTTY) stdin.destroy();
}
