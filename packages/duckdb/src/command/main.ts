/// <reference types="node" />
import process from "node:process";
import { run } from "./run.ts";

/** The command on the streams of this process; sets its exit status. */
export async function main(argv: readonly string[]): Promise<void> {
  process.exitCode = await run(argv, {
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
  });
}
