import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PassThrough, Readable, Writable } from "node:stream";
import { afterAll } from "vitest";
import { run } from "../../packages/tapewise/src/command/run.ts";

export interface Ran {
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the command in this process, on streams of its own. */
export async function runCommand(
  argv: readonly string[],
  input: string | readonly Uint8Array[] = "",
): Promise<Ran> {
  const out = collect();
  const err = collect();
  const chunks = typeof input === "string" ? [Buffer.from(input)] : input;
  const stdin = Readable.from(chunks, { objectMode: false });
  const status = await run(argv, { stdin, stdout: out.stream, stderr: err.stream });
  return { status, stdout: out.text(), stderr: err.text() };
}

/** A writable stream that keeps what it is given. */
export function collect(): { readonly stream: Writable; readonly text: () => string } {
  const chunks: Buffer[] = [];
  const stream = new Writable({
    write(chunk: Buffer, _encoding, done) {
      chunks.push(chunk);
      done();
    },
  });
  return { stream, text: () => Buffer.concat(chunks).toString("utf8") };
}

/** A pair of streams that say they are a terminal. */
export function terminal(): {
  readonly stdin: PassThrough & { isTTY: true };
  readonly stdout: PassThrough & { isTTY: true };
} {
  return {
    stdin: Object.assign(new PassThrough(), { isTTY: true as const }),
    stdout: Object.assign(new PassThrough(), { isTTY: true as const }),
  };
}

/** A folder with files in it, by name, for as long as the tests of a file run. Call it outside of tests. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): (name: string) => string {
  const folder = mkdtempSync(join(tmpdir(), "tapewise-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return (name) => join(folder, name);
}

/** A chart without surprises: ranges of 5 cm that overlap by 1 cm. */
export const PLAIN_CHART =
  "size,torso-length (cm),hip-belt-girth (cm)\nS,38-43,70-98\nM,42-47,76-104\nL,46-51,80-120\n";
